import { LitElement } from "lit";

/** An element over HTML that was built: it finds its parts and writes to them, and draws nothing of its own. */
export class LightElement extends LitElement {
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  /** The part of that name; built HTML without it is a mistake of ours. */
  protected partNamed<E extends HTMLElement = HTMLElement>(name: string): E {
    const part = this.querySelector<E>(`[data-part="${name}"]`);
    if (!part) throw new Error(`${this.localName} has no part "${name}"`);
    return part;
  }
}
