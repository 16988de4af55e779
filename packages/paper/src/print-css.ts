/**
 * Looks of a sheet: on the screen an article, black on white whatever the theme; on paper its pages at true size.
 * Put whatever else is on the screen under `@media print { display: none }`. Class names begin with `paper`.
 */
export const PRINT_CSS = `
@page paper-letter { size: 215.9mm 279.4mm; margin: 0 }
@page paper-a4 { size: 210mm 297mm; margin: 0 }
.paper-pages { display: none }
@media print {
  .paper { display: none }
  .paper-pages { display: block }
  .paper-pages[data-paper=letter] { page: paper-letter }
  .paper-pages[data-paper=a4] { page: paper-a4 }
  .paper-page { display: block; break-after: page; break-inside: avoid }
  .paper-page:last-child { break-after: auto }
  html, body { margin: 0; padding: 0; background: #fff }
}
.paper { box-sizing: border-box; max-width: 210mm; margin: 0 auto; padding: 1.2rem; color: #000; background: #fff; font: 1.1rem/1.35 'Atkinson Hyperlegible', sans-serif }
.paper[data-print=large] { font-size: 1.6rem; line-height: 1.4 }
.paper[data-print=large] .paper-small, .paper[data-print=large] dt { font-size: 1em }
.paper *, .paper *::before { box-sizing: border-box }
.paper :where(p, dl, dd, ol, ul, h1, h2, h3, figure) { margin: 0; padding: 0 }
.paper :where(p + p) { margin-top: .3em }
.paper :where(h1, h2, h3), .paper-code { font-family: 'Bitter', serif; font-weight: 700; line-height: 1.15 }
.paper h1 { font-size: 2em }
.paper h2 { font-size: 1.35em; margin: 1em 0 .3em }
.paper h3 { font-size: 1.1em; margin: .8em 0 .2em }
.paper-head { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 1rem; border-bottom: 5px double #000; padding-bottom: .5em }
.paper-small, .paper dt { font-size: .9em; color: #333 }
.paper-strong, .paper-value, .paper .paper-write-ins, .paper .paper-tag { margin: 0 0 .8em }
.paper-line { font-weight: 700 }
.paper-notice { border: 2px solid #000; padding: .6em .8em; margin: .8em 0 }
.paper .paper-notice h2 { margin: 0; font-size: 1.1em }
.paper-digits { font: 700 clamp(7rem, 34vw, 15rem)/.9 'Bitter', serif }
.paper-unit { font: 700 2.4em/1 'Bitter', serif }
.paper-facts { display: grid; grid-template-columns: repeat(auto-fit, minmax(11rem, 1fr)); gap: .6em 1.4em; margin: .6em 0 }
.paper-large .paper-value { font: 700 2em/1.1 'Bitter', serif }
.paper table { width: 100%; border-collapse: collapse; margin: .6em 0 }
.paper th { background: #ebebeb; border-bottom: 2px solid #000; text-align: left }
.paper th, .paper td { padding: .3em .5em; vertical-align: top }
.paper td { border-bottom: 1px solid #8c8c8c }
.paper .paper-right { text-align: right }
.paper-walk { list-style: none }
.paper-walk li { display: grid; grid-template-columns: auto 1fr; gap: .6em; padding: .4em 0 }
.paper-stitched li { grid-template-columns: 4em auto 1fr }
.paper-clock { font: 700 1em/1.35 'Bitter', serif; border-right: 2px dashed #8c8c8c }
.paper-box { display: inline-block; width: 1em; height: 1em; border: 2px solid #000; margin: .15em .25em 0 0 }
.paper-write { margin-left: .6em; color: #333 }
.paper-write::after { content: ''; display: inline-block; width: 4em; border-bottom: 1px solid #000; margin-left: .3em }
.paper-care { border-left: 4px solid #000; padding-left: .5em }
.paper-write-ins p { display: flex; align-items: end; gap: .5em; min-height: 2em }
.paper-line { flex: 1; border-bottom: 1px solid #8c8c8c; min-height: 1.3em }
.paper-columns { display: grid; gap: 1.8em }
@media (max-width: 40rem) { .paper .paper-columns { grid-template-columns: 1fr !important } }
.paper-tag > div { display: grid; grid-template-columns: auto 1fr auto; gap: 1em; align-items: center; border: 2px dashed #8c8c8c; padding: 1em; margin-top: .4em }
.paper-ring { width: 1.4em; height: 1.4em; border: 2px solid #000; border-radius: 50% }
.paper-tag-number { font: 700 2.4em/1 'Bitter', serif }
.paper-labels { list-style: none; display: grid; grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); gap: 1rem }
.paper-labels li { border: 1px solid #8c8c8c; padding: .8em }
.paper-code { font-size: 1.3em }
.paper-squares { display: block; margin-top: .4em }
.paper footer { border-top: 1px solid #8c8c8c; margin-top: 1.2em; padding-top: .4em; font-size: .9em }
`
