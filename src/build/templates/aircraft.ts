import { builtInSchool } from "../../cells/course.ts";
import { fitPanelShell } from "../../widgets/fit-panel/shell.ts";
import { formParts, schoolFormShell } from "../../widgets/school-form/shell.ts";
import { type Page, page } from "../page.ts";

/** The page on which a school puts its own numbers in; no page where the built-in school can't be read. */
export function aircraftPage(version: string): Page[] {
  if (!builtInSchool) return [];
  const main = `<main class="sheet" id="main">
<nav class="place" aria-label="On this page">${ruler()}</nav>
<article class="chapter aircraft">
<header class="title wide">
<h1>Aircraft</h1>
<p class="standfirst">Put your own aeroplane, place and technique in once. Every chapter, figure, exercise and print follows.</p>
<button type="button" class="said needs-script" data-part="print">Print the sheet</button>
</header>
<details class="only-narrow in-chapter"><summary>On this page</summary>${ruler()}</details>
<div class="notice" role="status" data-part="notices"></div>
${offerHtml}
${schoolFormShell(builtInSchool)}
<details class="fold needs-script" id="fit"><summary><h2>From readings noted in flight</h2></summary><p class="about">Two readings give a constant, six show how far they scatter. A constant taken over stands in the form above until you save it.</p>${fitPanelShell()}</details>
<details class="fold needs-script" id="file"><summary><h2>File and address</h2></summary>
${fileHtml}
</details>
${signOff}
</article>
</main>`;
  return [
    page(
      {
        path: "aircraft.html",
        title: "Aircraft · Hoodwork",
        description:
          "A school’s own aeroplane, place, technique and words: checked at entry, kept in the browser, handed on as a file or an address.",
        entry: "aircraft",
        style: "aircraft-page",
        current: "Aircraft",
        main,
        sheet: { school: builtInSchool },
      },
      version,
    ),
  ];
}

const ruler = (): string => {
  const stops = [
    ...formParts.map(({ id, title }) => ({ id: id === "main" ? "main-numbers" : id, title })),
    { id: "fit", title: "From readings" },
    { id: "file", title: "File and address" },
  ];
  return `<ol>${stops.map(({ id, title }) => `<li><a href="#${id}">${title}</a></li>`).join("")}</ol>`;
};

const offerHtml = `<section class="offer" data-part="offer" tabindex="-1" aria-labelledby="offer-title" hidden>
<h2 id="offer-title">Take these numbers over?</h2>
<p data-part="offer-words"></p>
<div class="scroller" tabindex="0" role="group" aria-label="What differs" data-part="offer-table"><table><thead><tr><th scope="col">Entry</th><th scope="col">Here</th><th scope="col">There</th></tr></thead><tbody data-part="differences"></tbody></table></div>
<div class="actions"><button type="button" class="main" data-part="take">Take them over</button><button type="button" class="said" data-part="leave">Leave mine as they are</button></div>
</section>`;

const fileHtml = `<h3>Keep as a file</h3>
<p>One file in plain text that reads like a form: to keep beside the flight manual, to mend in any editor, to hand to a colleague.</p>
<p class="actions"><button type="button" class="said" data-part="export">Export as YAML</button></p>
<h3>Take a file in</h3>
<p>It is checked first; what differs is shown, and nothing is replaced before you say so.</p>
<p class="pick"><label for="import-file">File</label><input type="file" id="import-file" accept=".yaml,.yml,text/plain" data-part="import-file"></p>
<p class="pasted"><label for="import-text">Or its text</label><textarea id="import-text" rows="5" spellcheck="false" autocomplete="off" data-part="import-text"></textarea></p>
<p class="actions"><button type="button" class="said" data-part="import-read">Read the text</button></p>
<div class="refused" role="status" data-part="import-problems"></div>
<h3>Hand on by an address</h3>
<p>The whole form in one address, for a message or a link on the school’s own site.</p>
<p class="actions"><button type="button" class="said" data-part="hand-on">Make the address</button></p>
<div data-part="handed" hidden><p class="handed"><label for="address">Address</label><input type="text" id="address" readonly data-part="address"><button type="button" class="said" data-part="copy">Copy</button></p><p class="about" role="status" data-part="handed-words"></p></div>`;

const signOff = `<section class="sign-off" aria-label="Sign-off"><p>Compared with the flight manual entry by entry. The flight manual decides.</p><dl><div><dt>Flight manual, edition</dt><dd></dd></div><div><dt>Instructor</dt><dd></dd></div><div><dt>Date</dt><dd></dd></div><div><dt>Signature</dt><dd></dd></div></dl></section>`;
