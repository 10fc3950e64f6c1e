/** What a name or an expression stands for: null is a physical 'no solution'. */
export type Value = number | string | boolean | null;

export type ArithmeticSign = "+" | "-" | "*" | "/" | "^";
export type ComparisonSign = "<" | "<=" | ">" | ">=" | "==" | "!=";

interface Stretch {
  /** Offset in the expression's text where the node starts. */
  readonly at: number;
  /** The node's own stretch of that text, brackets around it left out. */
  readonly text: string;
}

export interface NumberNode extends Stretch {
  readonly kind: "number";
  readonly value: number;
}

export interface WordNode extends Stretch {
  readonly kind: "word";
  readonly value: string;
}

/** `true` or `false`. */
export interface TruthNode extends Stretch {
  readonly kind: "truth";
  readonly value: boolean;
}

export interface NameNode extends Stretch {
  readonly kind: "name";
  readonly name: string;
}

export interface NegativeNode extends Stretch {
  readonly kind: "negative";
  readonly of: Node;
}

export interface ArithmeticNode extends Stretch {
  readonly kind: "arithmetic";
  readonly sign: ArithmeticSign;
  readonly left: Node;
  readonly right: Node;
}

export interface ComparisonNode extends Stretch {
  readonly kind: "comparison";
  readonly sign: ComparisonSign;
  readonly left: Node;
  readonly right: Node;
}

export interface LogicNode extends Stretch {
  readonly kind: "logic";
  readonly sign: "and" | "or";
  readonly left: Node;
  readonly right: Node;
}

export interface NotNode extends Stretch {
  readonly kind: "not";
  readonly of: Node;
}

/** A call of a plain function or of a formula; `field` where one of several results is taken. */
export interface CallNode extends Stretch {
  readonly kind: "call";
  readonly name: string;
  readonly args: readonly Node[];
  readonly field?: string;
}

export type Node =
  | NumberNode
  | WordNode
  | TruthNode
  | NameNode
  | NegativeNode
  | ArithmeticNode
  | ComparisonNode
  | LogicNode
  | NotNode
  | CallNode;

/** The nodes directly beneath a node, in the order of the text. */
export function beneath(node: Node): readonly Node[] {
  switch (node.kind) {
    case "negative":
    case "not":
      return [node.of];
    case "arithmetic":
    case "comparison":
    case "logic":
      return [node.left, node.right];
    case "call":
      return node.args;
    default:
      return [];
  }
}

/** Names of quantities an expression uses, each once, in the order of the text; names of functions are left out. */
export function namesIn(node: Node): string[] {
  const names = new Set<string>();
  const visit = (each: Node): void => {
    if (each.kind === "name") names.add(each.name);
    beneath(each).forEach(visit);
  };
  visit(node);
  return [...names];
}
