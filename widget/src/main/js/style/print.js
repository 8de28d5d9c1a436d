/* The printed card: the answer's sentence, what was asked in plain text, figures, pictures, wires, cautions, assumptions. No controls. */
export const PRINT = `
.onpaper, .take:not(.stale, .asking) .outofdate { display: none }
@media (prefers-reduced-motion: reduce) { * { transition: none !important; scroll-behavior: auto !important } }
@media print {
  :host { color-scheme: light !important; font-size: 9pt; line-height: 1.4; --paper: #fff; --ink: #000; --quiet: #333; --rule: #bbb; --entry: #777; --accent: #000; --small: .9em; --large: 1.5em }
  .sheet { padding: 0; border-width: 2px 0 0 }
  .bands { display: block !important }
  .asks, .strip, .print, .units, .trouble, .take > h2, .why > summary, .behind > summary, .circuits summary, .assumptions button, .assumptions button + *, .assumptions .api { display: none !important }
  .onpaper { display: block }
  .outofdate { border: 1px solid #000; padding: .25em .5em; margin-bottom: .5em; font-weight: 650 }
  .old::before { content: "Out of date: from before the last change."; font-weight: 650 }
  .head { padding: .5em 0 }
  .band { padding: .5em 0 0 }
  .band h3 { padding: .9em 0 .25em; break-after: avoid }
  .take .sentence { position: static !important; max-width: none; padding: 0 0 .25em; font-weight: 650 }
  .blanks { display: grid; grid-template-columns: 2fr 2fr 1fr; gap: 1.5em; padding: 1em 0 .25em }
  .blanks span { border-bottom: 1px solid var(--entry) }
  .order li { max-width: none }
  .order td, .order th { padding-block: .15em }
  .order tbody tr:last-child > * { font-weight: 650 }
  .order .note { display: inline; padding-inline-start: .75em }
  .groups { columns: 2; column-gap: 2.5em }
  .group, .figure, .picture, .cautions li, .assumptions li, .laws li, tr, .besides > * { break-inside: avoid }
  .group > h3 { margin: 0 }
  .figure { grid-template-columns: minmax(0, 1fr) auto; padding: .2em 0; gap: 0 .5em }
  .why::details-content { grid-column: 1 / -1 }
  .pictures { columns: 2; column-gap: 2.5em; padding-top: .5em }
  .picture { max-width: none; padding: .75em 0 0 }
  .picture text { font-size: 11.5px }
  .scroll { overflow: visible; max-height: none }
  .part { padding-top: 0 }
  .cautions ul, .assumptions ul, .laws ul { columns: 2; column-gap: 2.5em; padding: 0 }
  .assumptions ul { columns: 3; column-gap: 2em }
  .assumptions .common-practice { display: none }
  ol { margin: 0 }
  .cautions li, .assumptions li, .laws li { padding: .3em 0; max-width: none }
  .assumptions li { font-size: 7pt; line-height: 1.25; padding: .15em 0 }
  .assumptions summary { text-decoration: none; color: inherit }
  .assumptions details::details-content { content-visibility: visible; block-size: auto }
  .part summary h3 { font-weight: 650 }
  .cautions { font-size: .95em }
  .cautions .ground, .assumptions .ground { font-size: .9em }
  .old { opacity: 1 }
}
`;
