export const PICTURE = `
.picture { padding-top: 1.5em; max-width: 34em }
.picture svg { display: block; width: 100%; height: auto; margin: .5em 0 .25em; overflow: visible }
figcaption b { display: block }
.behind > summary { font-size: var(--small) }
.picture text { font-size: 11px; fill: var(--ink); font-variant-numeric: tabular-nums }
.picture .axis { fill: var(--quiet) }
.picture .end { text-anchor: end }
.picture .middle { text-anchor: middle }
.hair { stroke: var(--rule); stroke-width: 1 }
.zero { stroke: var(--ink); stroke-width: 1 }
.hatch .ground { fill: color-mix(in srgb, var(--hue) 45%, var(--paper)) }
.hatch .line { stroke: var(--line); stroke-width: 1; fill: none }
.sun { --hue: var(--sun); --line: var(--sun-line) }
.engine { --hue: var(--engine); --line: var(--engine-line) }
.mains { --hue: var(--mains); --line: var(--mains-line) }
.use, .loss { --hue: var(--use); --line: var(--use-line) }
.store { --hue: var(--quiet); --line: var(--quiet) }
text.trip { font-weight: 650 }
.need { stroke: var(--ink); stroke-width: 2; stroke-dasharray: 5 3 }
.plainly { fill: none; stroke: var(--quiet); stroke-width: 1.5; stroke-dasharray: 5 3 }
.floor { stroke: var(--danger); stroke-width: 1.5 }
.picture .danger { fill: var(--danger) }
.picture .halo { paint-order: stroke; stroke: var(--paper); stroke-width: 4px; stroke-linejoin: round }
.spread { fill: color-mix(in srgb, var(--use) 40%, var(--paper)); stroke: var(--use-line); stroke-width: .75 }
.median { fill: none; stroke: var(--ink); stroke-width: 1.75; stroke-linejoin: round }
.pick { fill: var(--accent); stroke: var(--paper); stroke-width: 1.5 }
.bar { stroke: var(--line); stroke-width: 1 }
`;
