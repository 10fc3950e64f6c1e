import { createHash } from "node:crypto";
import { builtIn } from "../cells/course.ts";
import { escapeHtml } from "../cells/escape-html.ts";

/** A page of the workbook before Vite has put its scripts and styles in place. */
export interface Page {
  /** Where it stands in the site: 'chapters/turning.html'. */
  readonly path: string;
  readonly html: string;
}

interface PageParts {
  readonly path: string;
  readonly title: string;
  readonly description: string;
  /** Entry script and stylesheet in src/pages, without folder and ending; a page may do without a script of its own. */
  readonly entry: string;
  readonly style: string;
  readonly main: string;
  /** The entry of the top navigation that is this page. */
  readonly current?: string;
  /** Buttons at the right of the mast beside the light switch. */
  readonly tools?: string;
  /** Fonts of the typeset maths that the first view needs, by KaTeX's names. */
  readonly mathFonts?: readonly string[];
  /** JSON for the page's script. */
  readonly sheet?: unknown;
}

/**
 * Sets what the reader chose, and whether she has a school of her own, before the first paint: 500 bytes at most. With its hash in the policy no other inline script runs.
 */
export const beforePaint =
  '(d=>{try{localStorage.getItem("hoodwork.school")&&(d.dataset.own="");let s=JSON.parse(localStorage.getItem("hoodwork.settings"))||{};for(let k of["theme","words"])s[k]&&/^[a-z]+$/.test(s[k])&&(d.dataset[k]=s[k])}catch{}})(document.documentElement)';

const navigation = [
  { name: "Contents", path: "index.html" },
  { name: "Formulas", path: "formulas.html" },
  { name: "Error atlas", path: "atlas.html" },
  { name: "Glossary", path: "glossary.html" },
  { name: "Aircraft", path: "aircraft.html" },
];

/** The whole page: head, mast, main and the foot that every page carries. */
export function page(parts: PageParts, version: string): Page {
  const root = "../".repeat(parts.path.split("/").length - 1) || "./";
  const links = navigation
    .map(
      ({ name, path }) => `<a href="${root}${path}"${name === parts.current ? ' aria-current="page"' : ""}>${name}</a>`,
    )
    .join("");
  const html = `<!doctype html>
<html lang="en-GB" data-words="british">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy()}">
<title>${parts.title}</title>
<meta name="description" content="${escapeHtml(parts.description)}">
<meta name="color-scheme" content="light dark">
<script>${beforePaint}</script>
${fontLinks(parts.mathFonts ?? [])}<link rel="icon" href="${root}icon.svg" type="image/svg+xml">
<link rel="stylesheet" href="/src/pages/styles/${parts.style}.css">
<script type="module" src="/src/pages/${parts.entry}.ts"></script>
</head>
<body>
<a class="skip" href="#main">To the text</a>
<header class="mast">
<a class="name-of-house" href="${root}index.html" aria-label="Hoodwork, contents">H<span>oo</span>dwork</a>
<nav aria-label="Workbook">${links}</nav>
<div class="tools">${parts.tools ?? ""}<details class="menu"><summary>Menu</summary><nav aria-label="Workbook, menu">${links}</nav></details><button type="button" class="needs-script" data-part="shade">Dark</button></div>
</header>
<div class="bound"></div>
${parts.main}
<footer class="foot">${whoseLine(root)}<p><b>Ground study only</b><span>Not for flight planning or use in flight. The flight manual, local rules and a licensed instructor decide.</span><span>Hoodwork ${version}</span></p></footer>
${parts.sheet === undefined ? "" : `<script type="application/json" id="sheet">${json(parts.sheet)}</script>\n`}</body>
</html>
`;
  return { path: parts.path, html };
}

/** Whose numbers and words the page shows. */
const whoseLine = (root: string): string =>
  `<p class="whose"><b>Numbers</b><span data-part="whose">${escapeHtml(builtIn.aircraft.owner)}</span><a href="${root}aircraft.html">Change</a><span class="soft">Words: <span class="british">rate one, balance, QNH</span><span class="american">standard rate, coordination, altimeter setting</span></span></p>`;

function policy(): string {
  const hash = createHash("sha256").update(beforePaint).digest("base64");
  return [
    "default-src 'none'",
    `script-src 'self' 'sha256-${hash}'`,
    "style-src-elem 'self'",
    "style-src-attr 'unsafe-inline'", // the typeset maths positions its parts by inline styles
    "img-src 'self' blob: data:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

const fontLinks = (names: readonly string[]): string =>
  names
    .map(
      (name) =>
        `<link rel="preload" as="font" type="font/woff2" crossorigin href="/node_modules/katex/dist/fonts/${name}.woff2">\n`,
    )
    .join("");

/** JSON that cannot end the script element it stands in. */
const json = (value: unknown): string => JSON.stringify(value).replaceAll("<", "\\u003c");
