import { framingOf } from "./answers.ts";
import { answerAsTheyDid } from "./kept.ts";
import { wingedBlocks } from "./wingedBlocks.ts";

answerAsTheyDid("winged", wingedBlocks(160), framingOf);
