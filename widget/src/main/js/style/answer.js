export const ANSWER = `
.sentence { font-size: var(--large); line-height: 1.35; text-wrap: pretty; padding-bottom: .75em; max-width: 32em }
.answer { transition: opacity .15s }
.asking .answer { opacity: .55 }
.asking .sentence { color: var(--quiet) }
.stale .answer, .stale .sentence { --ink: var(--quiet); color: var(--quiet) }
.old { opacity: .55 }
.trouble:not(:empty) { border-inline-start: 3px solid var(--ink); padding: .25em 0 .25em .75em; margin-bottom: 1em }
.trouble .refused { font-weight: 650 }
.figure { display: grid; grid-template-columns: minmax(0, 1fr) auto 2.5em; gap: 0 1em; align-items: baseline; border-top: 1px solid var(--rule); padding: .4em 0 }
.figures .figure:last-child { border-bottom: 1px solid var(--rule) }
.note { display: block; line-height: 1.3 }
.value { text-align: end; font-variant-numeric: tabular-nums; white-space: nowrap }
.value small { display: inline-block; min-width: 2.6em; text-align: start }
.reason { display: contents }
.why > summary { text-align: end }
.why { display: contents }
.why .ground { font-size: 1em }
.why::details-content { grid-column: 1 / -1 }
.steplabel b { display: block }
.steplabel b::first-letter, .assumptions p::first-letter { text-transform: uppercase }
.steps { padding: .5em 0 .5em .75em; border-inline-start: 1px solid var(--entry); margin: .25em 0 .5em }
.step p { padding-bottom: .15em }
.step code { display: block }
.inputs > li { padding-inline-start: .75em }
.deeper > summary { color: inherit; text-decoration-color: var(--accent) }
.step .result { font-variant-numeric: tabular-nums; font-weight: 650 }
.worst { padding-top: .5em; max-width: 44em }
.value > b:only-child { white-space: nowrap }
.part { padding-top: 1em }
.part summary h3 { display: inline; padding: 0; font-weight: 400 }
.cautions li, .assumptions li, .laws li { border-top: 1px solid var(--rule); padding: .5em 0; max-width: 44em }
.laws li { display: flex; flex-wrap: wrap; gap: 0 1em; justify-content: space-between; padding: .25em 0 }
.cautions .caution-danger { border-inline-start: 3px solid var(--danger); padding-inline-start: .75em }
.frost { border-inline-start: 3px solid var(--danger); padding-inline-start: .75em; max-width: 44em }
.frost b, .caution-danger b { color: var(--danger) }
.assumptions ul { padding-top: .5em }
table { border-collapse: collapse; font-size: var(--small); font-variant-numeric: tabular-nums; min-width: 100% }
th, td { padding: .25em .75em .25em 0; border-bottom: 1px solid var(--rule); text-align: end; font-weight: 400; vertical-align: baseline; white-space: nowrap }
th:first-child { text-align: start }
thead th { color: var(--quiet); vertical-align: bottom; white-space: normal }
.scroll { overflow-x: auto; max-height: 22em; overflow-y: auto }
`;
