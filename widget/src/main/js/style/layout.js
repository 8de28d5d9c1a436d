export const LAYOUT = `
.sheet { background: var(--paper); padding: 1.25em 1em 1em; border-top: 3px solid var(--ink); border-bottom: 1px solid var(--rule) }
.head { display: flex; flex-wrap: wrap; gap: .25em 1.25em; align-items: baseline; padding-bottom: 1em }
.head .name { flex: 1 1 16em; display: flex; flex-wrap: wrap; gap: 0 .75em; align-items: baseline }
.head .name span { color: var(--quiet); font-size: var(--small) }
.units { display: flex; gap: .75em; font-size: var(--small) }
.unitchoice { display: flex; gap: .3em; align-items: center }
.unitchoice input { accent-color: var(--accent); margin: 0; width: 1.1em; height: 1.1em }
.head .print { font-size: var(--small) }
.band { border-top: 1px solid var(--ink); padding: .75em 0 2em }
.band > h2 { padding-bottom: .5em }
.band h3 { padding: 1.5em 0 .5em }
.take:focus { outline: none }
.strip { position: sticky; bottom: 0; display: flex; gap: 1em; width: calc(100% + 2em); margin: 0 -1em; padding: .75em 1em; border: 0; border-top: 2px solid var(--ink);
  background: var(--paper); color: var(--ink); font: inherit; text-align: start; cursor: pointer }
.strip:focus-visible { outline-offset: -4px }
.strip span:first-child { flex: 1; overflow: hidden; white-space: nowrap; text-overflow: ellipsis }
@container (min-width: 900px) {
  .sheet { padding: 1.5em 2em 1em }
  .bands { display: grid; grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr); gap: 0 3em }
  .asks { position: sticky; bottom: 0; align-self: end }
  .take .sentence { position: sticky; top: 0; padding-top: .5em; background: var(--paper); z-index: 1 }
  .take > h2 { padding-bottom: 0 }
  .strip { display: none }
}
`;
