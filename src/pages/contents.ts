import { bindWhose } from "./school.ts";
import { bindShade } from "./shade.ts";

bindShade();
bindWhose();
