/* On a phone a line of the list takes two rows; from 560 px one. */
export const LOADS = `
.load { display: grid; grid-template-columns: 3em 2.5em 2.75em minmax(5.5em, 1fr) 3.25em; gap: .25em .5em; align-items: baseline; padding: .5em 0; border-bottom: 1px solid var(--rule) }
.load .name { grid-column: 2 / -1 }
.load .quantity { grid-column: 1 }
.load .power { grid-column: 1 / 3; grid-row: 2 }
.load .pick { grid-row: 2; grid-column: 3 }
.load .hours { grid-row: 2; grid-column: 4 }
.load .hours ~ .pick { grid-column: 5 }
.load .more { grid-row: 3; grid-column: 1 }
.load .remove { grid-row: 3; grid-column: 2 / 4; justify-self: start; font-size: var(--small) }
.load .reading { grid-row: 3; grid-column: 4 / 6; text-align: end; font-variant-numeric: tabular-nums; white-space: nowrap }
.load .more[open] { grid-row: 4; grid-column: 1 / -1 }
.load .more > summary, .load .remove { color: var(--quiet) }
.load .second::before { content: " · " }
.told { grid-column: 1 / -1; font-size: var(--small); max-width: 40em }
.told:empty { display: none }
.question { color: var(--quiet) }
.standing { padding-top: .5em; font-size: var(--small); color: var(--quiet) }
.standing:empty { display: none }
.heads { display: none }
.loads:empty { display: none }
.starters p { padding-bottom: .5em }
.starter { display: flex; flex-direction: column; width: 100%; padding: .75em .5em; border: 0; border-top: 1px solid var(--rule); background: none; text-align: start; cursor: pointer }
.starter:last-child { border-bottom: 1px solid var(--rule) }
.starter b { color: var(--accent); text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: .2em }
.starter span { color: var(--quiet) }
.adding { display: flex; flex-wrap: wrap; gap: .75em 1.5em; padding-top: 1em }
.starterlist { display: flex; flex: 1 1 18em; gap: .75em; min-width: 0 }
.starterlist select { flex: 1 }
@container (min-width: 560px) {
  .load { grid-template-columns: 3em minmax(7em, 1fr) 3.5em 2.25em 5.5em 3em 5em; gap: 0 .75em; padding: .4em 0 }
  .load .name { grid-column: 2 }
  .load .power { grid-column: 3; grid-row: 1 }
  .load .pick { grid-row: 1; grid-column: 4 }
  .load .hours { grid-row: 1; grid-column: 5 }
  .load .hours ~ .pick { grid-row: 1; grid-column: 6 }
  .load .reading { grid-row: 1 / 3; grid-column: 7; padding-inline-end: .25em }
  .load .second { display: block }
  .load .second::before { content: none }
  .load .remove { grid-row: 2; grid-column: 3 / 5; justify-self: end }
  .load .more { grid-row: 2; grid-column: 2 }
  .load .more[open] { grid-row: 3; grid-column: 2 / -1 }
  .heads { display: grid; padding: 0; font-size: var(--small); color: var(--quiet); border-bottom-color: var(--entry) }
  .heads .draws { grid-column: 3 / 5 }
  .heads .reading { grid-row: 1 }
}
`;
