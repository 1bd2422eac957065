import { defineConfig } from "vitest/config";
import { chosenRoom } from "./rooms.ts";

export default defineConfig({ test: { include: [...chosenRoom().tests], testTimeout: 20_000 } });
