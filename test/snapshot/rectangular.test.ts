import { answersOf } from "./answers.ts";
import { answerAsTheyDid } from "./kept.ts";
import { rectangularBlocks } from "./rectangularBlocks.ts";

answerAsTheyDid("rectangular", rectangularBlocks(100), answersOf);
