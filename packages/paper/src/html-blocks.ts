/** Each block as semantic HTML; looks come from print-css.ts alone. Every text is escaped. */
import type { CurvesBlock, CutJarBlock, PlotBlock } from './drawn-blocks.ts'
import { escapeHtml } from './escape-html.ts'
import { curvesPiece } from './layout/curves.ts'
import { cutJarPiece } from './layout/cut-jar.ts'
import { KNOWN_MEASURE } from './layout/known-widths.ts'
import { type Room, typeScale } from './layout/piece.ts'
import { plotPiece } from './layout/plot.ts'
import type {
  BigNumberBlock,
  Block,
  ChecklistBlock,
  ChecklistItem,
  FactsBlock,
  LabelsBlock,
  QrCode,
  TableBlock,
  TagBlock,
  WriteInsBlock,
} from './model.ts'
import { inkSvg, squaresPath } from './print-pages.ts'
import { qrSquares } from './qr.ts'
import { mmToPt } from './sheets.ts'

export function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'head':
      return `<header class="paper-head"><div><h1>${escapeHtml(block.title)}</h1>${paragraphs(block.lines)}${(block.strongLines ?? []).map((line) => `<p class="paper-strong">${escapeHtml(line)}</p>`).join('')}</div>${block.qr ? qrSvg(block.qr) : ''}</header>`
    case 'heading':
      return `<h${block.level}>${escapeHtml(block.text)}</h${block.level}>`
    case 'line':
      return `<p class="paper-${block.strength ?? 'plain'}">${escapeHtml(block.text)}</p>`
    case 'notice':
      return `<aside class="paper-notice">${block.title === undefined ? '' : `<h2>${escapeHtml(block.title)}</h2>`}${paragraphs(block.lines)}</aside>`
    case 'big-number':
      return bigNumberHtml(block)
    case 'facts':
      return factsHtml(block)
    case 'table':
      return tableHtml(block)
    case 'checklist':
      return checklistHtml(block)
    case 'cautions':
      return block.lines.map((line) => cautionHtml(block.careWord, line)).join('')
    case 'write-ins':
      return writeInsHtml(block)
    case 'qr':
      return `<figure class="paper-qr">${qrSvg(block)}<figcaption>${escapeHtml(block.caption)}</figcaption></figure>`
    case 'tag':
      return tagHtml(block)
    case 'columns': {
      const shares = block.columns.map(({ share }) => `${share}fr`).join(' ')
      const sides = block.columns.map(({ blocks }) => `<div>${blocks.map(blockHtml).join('')}</div>`)
      return `<div class="paper-columns" style="grid-template-columns:${shares}">${sides.join('')}</div>`
    }
    case 'rule':
      return '<hr>'
    case 'together':
      return `<div class="paper-together">${block.blocks.map(blockHtml).join('')}</div>`
    case 'labels':
      return labelsHtml(block)
    case 'plot':
      return plotHtml(block)
    case 'curves':
      return drawingHtml(block, DRAWING_MM)
    case 'cut-jar':
      return drawingHtml(block, CUT_JAR_MM)
  }
}

function paragraphs(lines: readonly string[]): string {
  return lines.map((line) => `<p>${escapeHtml(line)}</p>`).join('')
}

function bigNumberHtml({ over, number, unit, beside, why, small, digitMm }: BigNumberBlock): string {
  const aside = beside === undefined ? '' : `<span class="paper-beside">${escapeHtml(beside)}</span>`
  const notes = `${paragraphs(why)}${small.map((line) => `<p class="paper-small">${escapeHtml(line)}</p>`).join('')}`
  const digits = `<span class="paper-digits" style="--digit-height:${digitMm}mm">${escapeHtml(number)}</span>`
  return `<section class="paper-big"><h2>${escapeHtml(over)}</h2><div><p class="paper-number">${digits} <span class="paper-unit">${escapeHtml(unit)}</span> ${aside}</p><div class="paper-why">${notes}</div></div></section>`
}

function factsHtml({ columns, facts, large }: FactsBlock): string {
  const items = facts.map(({ label, value, note }) => {
    const noteHtml = note === undefined ? '' : `<dd class="paper-small">${escapeHtml(note)}</dd>`
    return `<div><dt>${escapeHtml(label)}</dt><dd class="paper-value">${escapeHtml(value)}</dd>${noteHtml}</div>`
  })
  return `<dl class="paper-facts${large ? ' paper-large' : ''}" style="--columns:${columns}">${items.join('')}</dl>`
}

function tableHtml({ columns, rows, rowMm }: TableBlock): string {
  const cls = (index: number) => {
    const names = [columns[index]?.align === 'right' ? 'paper-right' : '', columns[index]?.strong ? 'paper-strong' : '']
    const used = names.filter((name) => name !== '').join(' ')
    return used === '' ? '' : ` class="${used}"`
  }
  const head = columns.map(({ title }, index) => `<th scope="col"${cls(index)}>${escapeHtml(title)}</th>`).join('')
  const body = rows.map(
    (row) => `<tr>${columns.map((_, index) => `<td${cls(index)}>${escapeHtml(row[index] ?? '')}</td>`).join('')}</tr>`,
  )
  const toWrite = rowMm ? ` class="paper-to-write" style="--row-height:${rowMm}mm"` : ''
  return `<table${toWrite}><thead><tr>${head}</tr></thead><tbody>${body.join('')}</tbody></table>`
}

function checklistHtml({ careWord, columns = 1, items }: ChecklistBlock): string {
  const hasMargin = items.some(({ margin }) => margin !== undefined)
  const stitched = hasMargin ? ' paper-stitched' : ''
  const list = items.map((item) => itemHtml(item, careWord, hasMargin)).join('')
  return `<ol class="paper-walk${stitched}" style="columns:${columns}">${list}</ol>`
}

function itemHtml(
  { margin, text, tallyCount = 0, details = [], cautions = [], writeIns = [] }: ChecklistItem,
  careWord: string,
  hasMargin: boolean,
): string {
  const box = '<span class="paper-box" aria-hidden="true"></span>'
  const clock = hasMargin ? `<span class="paper-clock">${escapeHtml(margin ?? '')}</span>` : ''
  const lines = writeIns.map((word) => `<span class="paper-write">${escapeHtml(word)}</span>`).join('')
  const tally = box.repeat(tallyCount)
  const head = `<p class="paper-step"><strong>${escapeHtml(text)}</strong> ${tally}<span class="paper-writes">${lines}</span></p>`
  const cares = cautions.map((line) => cautionHtml(careWord, line)).join('')
  return `<li>${clock}${box}<div>${head}${paragraphs(details)}${cares}</div></li>`
}

function cautionHtml(careWord: string, line: string): string {
  return `<p class="paper-care"><strong>${escapeHtml(careWord)}</strong> ${escapeHtml(line)}</p>`
}

function writeInsHtml({ columns, lines }: WriteInsBlock): string {
  const items = lines.map(
    ({ label, value }) =>
      `<p><span>${escapeHtml(label)}</span><span class="paper-line">${escapeHtml(value ?? '')}</span></p>`,
  )
  return `<div class="paper-write-ins" style="--columns:${columns}">${items.join('')}</div>`
}

function tagHtml({ cutLine, title, big, lines }: TagBlock): string {
  return `<section class="paper-tag"><p class="paper-small">${escapeHtml(cutLine)}</p><div><span class="paper-ring" aria-hidden="true"></span><div><h2>${escapeHtml(title)}</h2>${paragraphs(lines)}</div><p class="paper-tag-number">${escapeHtml(big)}</p></div></section>`
}

/** The content is its text alternative. */
function qrSvg({ content, sizeMm }: QrCode): string {
  const rows = qrSquares(content)
  const size = `width="${sizeMm}mm" height="${sizeMm}mm" viewBox="0 0 ${rows.length} ${rows.length}"`
  return `<svg class="paper-squares" role="img" aria-label="${escapeHtml(content)}" ${size} shape-rendering="crispEdges"><path d="${squaresPath(rows)}"/></svg>`
}

/** The drawing of the printed page. */
function plotHtml(block: PlotBlock): string {
  const width = mmToPt(188)
  const { height, ink } = plotPiece(block, { width, type: typeScale(11), isTight: false, measure: KNOWN_MEASURE })
  const drawn = ink(0, 0).map(inkSvg).join('')
  return `<figure class="paper-plot"><svg role="img" aria-label="${escapeHtml(block.alt)}" width="100%" viewBox="0 0 ${width.toFixed(1)} ${height.toFixed(1)}">${drawn}</svg></figure>`
}

/** Drawn this wide, so that its words keep their size on a phone. [mm] */
const DRAWING_MM = 86
const CUT_JAR_MM = 60

function drawingHtml(block: CurvesBlock | CutJarBlock, widthMm: number): string {
  const width = mmToPt(widthMm)
  const room: Room = { width, type: typeScale(11), isTight: false, measure: KNOWN_MEASURE }
  const { height, ink } = block.kind === 'curves' ? curvesPiece(block, room) : cutJarPiece(block, room)
  const drawn = ink(0, 0).map(inkSvg).join('')
  return `<figure class="paper-plot"><svg role="img" aria-label="${escapeHtml(block.alt)}" style="width:100%;max-width:${widthMm * 1.5}mm" viewBox="0 0 ${width.toFixed(1)} ${height.toFixed(1)}">${drawn}</svg></figure>`
}

/** To be read on a screen: the fullest wording of each. */
function labelsHtml({ labels }: LabelsBlock): string {
  const items = labels.map(({ wordings: [fullest = []], qr }) => {
    const lines = fullest.map(({ text, strength }) => `<p class="paper-${strength}">${escapeHtml(text)}</p>`)
    return `<li>${lines.join('')}${qr ? qrSvg(qr) : ''}</li>`
  })
  return `<ul class="paper-labels">${items.join('')}</ul>`
}
