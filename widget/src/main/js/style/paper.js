/*
 * Ink on paper, chalk on slate. A page may set the --wayside-* properties on the element. Hues of the four kinds of
 * energy after Okabe & Ito's palette, each with a darker line of its own so that the mark keeps 3:1 on the paper.
 */
export const PAPER = `
:host {
  --paper: var(--wayside-paper, light-dark(#fcfbf8, #20262b));
  --ink: var(--wayside-ink, light-dark(#1b2126, #ecebe4));
  --quiet: var(--wayside-quiet, light-dark(#565d64, #aeb4b6));
  --rule: var(--wayside-rule, light-dark(#d9d6cd, #3d454b));
  --entry: var(--wayside-entry, light-dark(#85888a, #818a90));
  --accent: var(--wayside-accent, light-dark(#17568c, #9fcbf0));
  --danger: light-dark(#b3261e, #ff9d93);
  --sun: #e69f00; --sun-line: light-dark(#9a6a00, #ffcf66);
  --engine: #009e73; --engine-line: light-dark(#00634a, #5fd9b6);
  --mains: #cc79a7; --mains-line: light-dark(#8c3d69, #f0aed0);
  --use: #56b4e9; --use-line: light-dark(#17679b, #a5dbfb);
  --small: .8125em;
  --large: 1.375em;
  display: block;
  color-scheme: light dark;
  container-type: inline-size;
  font: 16px/1.5 var(--wayside-font, system-ui, sans-serif);
  color: var(--ink);
  text-align: start;
}
:host([theme=light]) { color-scheme: light }
:host([theme=dark]) { color-scheme: dark }
:host([hidden]), [hidden] { display: none !important }
*, ::before, ::after { box-sizing: border-box }
.unseen { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap }
h2, h3, p, ul, dl, dd, figure, fieldset { margin: 0; padding: 0; border: 0; min-width: 0 }
h2, h3, b, legend { font-size: 1em; font-weight: 650 }
ul { list-style: none }
small, .note, .ground, .hint, .unit, .second, figcaption span, .why, .fault { font-size: var(--small) }
.note, .ground, .hint, .unit, .second, figcaption span { color: var(--quiet) }
code { font: .95em ui-monospace, monospace; overflow-wrap: anywhere }
:focus-visible { outline: 2px solid var(--accent); outline-offset: 2px }
`;
