export const PRINT = `
@media (prefers-reduced-motion: reduce) { * { transition: none !important; scroll-behavior: auto !important } }
@media print {
  :host { color-scheme: light; font-size: 10pt; --paper: #fff; --ink: #000; --quiet: #333; --accent: #000 }
  .sheet { padding: 0 }
  .bands { display: block !important }
  .asks, .take .sentence { position: static !important }
  .strip, .adding, .remove, .more:not([open]), .print, .units, .here, .go > .add, .why:not([open]) > summary, .behind > summary { display: none !important }
  .figure, .picture, .load, .cautions li { break-inside: avoid }
}
`;
