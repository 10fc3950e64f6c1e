import { bindShade } from "./shade.ts";

bindShade();
