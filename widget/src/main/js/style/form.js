/* Entries are lines to write on, not boxes. */
export const FORM = `
input, select, button { font: inherit; color: inherit; border-radius: 0 }
input:not([type=radio], [type=checkbox]), select { width: 100%; min-width: 0; height: 2.125em; padding: 0 .125em; border: 0; border-bottom: 1px solid var(--entry); background: transparent; appearance: none }
select { padding-inline-end: 1em; text-overflow: ellipsis; cursor: pointer;
  background: linear-gradient(45deg, transparent 50%, var(--quiet) 50%) right .3em center / .3em .3em no-repeat, linear-gradient(-45deg, transparent 50%, var(--quiet) 50%) right 0 center / .3em .3em no-repeat }
option, optgroup { background: light-dark(#fff, #20262b); color: light-dark(#1b2126, #ecebe4) }
input::placeholder { color: var(--quiet); opacity: 1 }
input.number { text-align: end; font-variant-numeric: tabular-nums }
input:hover, select:hover { border-bottom-color: var(--ink) }
input:focus-visible, select:focus-visible { outline-offset: 0 }
[aria-invalid] { border-bottom: 3px solid var(--ink) !important }
.fault { font-weight: 650; padding-top: .25em; line-height: 1.3 }
.entry { display: flex; align-items: baseline; gap: .35em }
.unit { white-space: nowrap }
.field label { display: block; font-size: var(--small); color: var(--quiet) }
.grid { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(9.5em, 100%), 1fr)); gap: .75em 1.5em; align-items: end }
.plain { border: 0; text-align: start; padding: .125em 0; min-height: 24px; background: none; color: var(--accent); text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: .2em; cursor: pointer }
.add { border: 1px solid var(--accent); padding: .35em .9em; background: none; color: var(--accent); cursor: pointer }
.add:hover, .starter:hover { background: color-mix(in srgb, var(--accent) 8%, transparent) }
.stay .grid { align-items: start }
.here { padding-top: .25em; font-size: var(--small) }
.stay + .stay { border-top: 1px solid var(--rule); margin-top: 1em; padding-top: .5em }
.stay > .plain { margin-top: .5em; font-size: var(--small) }
.go > .add { margin-top: 1em }
.stay .more { margin-top: .75em }
.stay .more + .plain { margin-top: .5em }
summary { cursor: pointer; min-height: 24px; color: var(--accent); width: fit-content; text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: .2em; list-style: none }
summary::-webkit-details-marker { display: none }
.more > summary { font-size: var(--small) }
.wishes .more { margin-top: 1em }
.more > .grid { padding: .5em 0 .75em }
.hint { align-self: center }
`;
