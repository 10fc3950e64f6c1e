import katex from "katex";

/** TeX as HTML with MathML for assistive technology. @throws where KaTeX cannot read it */
export const typeset = (tex: string, display: boolean): string =>
  katex.renderToString(tex, { displayMode: display, output: "htmlAndMathml", throwOnError: true, strict: "error" });

const fonts: readonly (readonly [mark: RegExp, font: string])[] = [
  [/class="[^"]*katex/, "KaTeX_Main-Regular"],
  [/class="[^"]*mathnormal/, "KaTeX_Math-Italic"],
  [/class="[^"]*size1[ "]/, "KaTeX_Size1-Regular"],
  [/class="[^"]*delimsizing size[1-2]/, "KaTeX_Size2-Regular"],
];

/** The fonts that the typeset maths of a page needs at once: preloaded, they keep the text from shifting. */
export const fontsFor = (html: string): string[] => fonts.filter(([mark]) => mark.test(html)).map(([, font]) => font);
