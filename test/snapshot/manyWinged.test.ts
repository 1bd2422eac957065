import { summedFramingOf } from "./answers.ts";
import { answerAsTheyDid } from "./kept.ts";
import { wingedBlocks } from "./wingedBlocks.ts";

answerAsTheyDid("manyWinged", wingedBlocks(600, 20_000), summedFramingOf);
