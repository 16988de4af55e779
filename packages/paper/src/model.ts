/**
 * What a printed sheet holds, as plain JSON: every text is already worded. The same model becomes a PDF (`./pdf`) and
 * a page for the browser's print door (`html.ts`). Leaves out: where ink falls (layout) and what a sheet says (documents).
 */
import type { CurvesBlock, CutJarBlock, PlotBlock } from './drawn-blocks.ts'

export type PaperSize = 'letter' | 'a4'

/** One sheet or set of sheets. */
export interface PaperDocument {
  /** In the footer and in the file's own title. */
  readonly title: string
  readonly paper: PaperSize
  readonly marginMm: number
  /** True prints `footer.inventedLine` on every page. */
  readonly invented: boolean
  /** UTC instant, ISO 8601, written into the file as its creation date; handed in, so the same document gives the same bytes. */
  readonly madeAt: string
  readonly footer: Footer
  /** True sets every word at 16 pt or more, one thing under the other, on as many pages as it takes. */
  readonly largePrint?: true
  /** Size of running text; never printed below 9. [pt]  Default 11. */
  readonly typePt?: number
  /** Pages it should fit: type shrinks, at smallest to 9 pt, then white is spared. A sheet still too long goes on overleaf. [count] */
  readonly fitPages?: number
  readonly blocks: readonly Block[]
}

export interface Footer {
  /** Holds `{page}` and `{pages}`. */
  readonly pageOf: string
  readonly edition: string
  readonly inventedLine: string
  /** Said when the type lacks a letter and `?` stands in for it; holds `{scripts}`. */
  readonly missingLetters: string
}

export type Block =
  | HeadBlock
  | HeadingBlock
  | LineBlock
  | NoticeBlock
  | BigNumberBlock
  | FactsBlock
  | TableBlock
  | ChecklistBlock
  | CautionsBlock
  | WriteInsBlock
  | QrBlock
  | TagBlock
  | ColumnsBlock
  | RuleBlock
  | TogetherBlock
  | LabelsBlock
  | PlotBlock
  | CurvesBlock
  | CutJarBlock

/** The top of a sheet: a nail hole, the title, what it is for, and perhaps a code to scan. */
export interface HeadBlock {
  readonly kind: 'head'
  readonly title: string
  readonly lines: readonly string[]
  /** In heavy type below the lines: what stands before all else. */
  readonly strongLines?: readonly string[]
  readonly qr?: QrCode
}

export interface HeadingBlock {
  readonly kind: 'heading'
  readonly level: 2 | 3
  readonly text: string
}

export interface LineBlock {
  readonly kind: 'line'
  readonly text: string
  readonly strength?: 'strong' | 'plain' | 'small'
}

/** Lines in a ruled frame: the seed line, the standing of a process. */
export interface NoticeBlock {
  readonly kind: 'notice'
  readonly title?: string
  readonly lines: readonly string[]
}

/** One number to be read across a room. */
export interface BigNumberBlock {
  readonly kind: 'big-number'
  readonly over: string
  readonly number: string
  readonly unit: string
  readonly beside?: string
  /** Beside the digits: why this number. */
  readonly why: readonly string[]
  readonly small: readonly string[]
  /** Height of the digits; less only where the number would be wider than the sheet. [mm] */
  readonly digitMm: number
}

export interface Fact {
  readonly label: string
  readonly value: string
  readonly note?: string
}

export interface FactsBlock {
  readonly kind: 'facts'
  readonly columns: 1 | 2 | 3 | 4
  /** True for figures read standing up. */
  readonly large?: true
  readonly facts: readonly Fact[]
}

export interface TableColumn {
  readonly title: string
  /** Part of the width, against the other columns' shares. */
  readonly share: number
  readonly align?: 'left' | 'right'
  readonly strong?: true
}

/** An empty cell is a place to write. */
export interface TableBlock {
  readonly kind: 'table'
  readonly columns: readonly TableColumn[]
  readonly rows: readonly (readonly string[])[]
  /** Least height of a row; give 8 or more where a hand will write. [mm] */
  readonly rowMm?: number
}

export interface ChecklistItem {
  /** In the stitched margin: the planned clock time. */
  readonly margin?: string
  readonly text: string
  /** A box for each time it is done, after the text: five re-boils, four rinses. [count] */
  readonly tallyCount?: number
  readonly details?: readonly string[]
  readonly cautions?: readonly string[]
  /** Each is a word with a line to write on, at the right. */
  readonly writeIns?: readonly string[]
}

export interface ChecklistBlock {
  readonly kind: 'checklist'
  /** The word before each caution. */
  readonly careWord: string
  /** Side by side, read down then across. */
  readonly columns?: 1 | 2
  readonly items: readonly ChecklistItem[]
}

export interface CautionsBlock {
  readonly kind: 'cautions'
  readonly careWord: string
  readonly lines: readonly string[]
}

export interface WriteIn {
  readonly label: string
  /** Printed on the line when already known. */
  readonly value?: string
}

export interface WriteInsBlock {
  readonly kind: 'write-ins'
  readonly columns: 1 | 2 | 3
  readonly lines: readonly WriteIn[]
}

export interface QrCode {
  /** Short: up to about 60 characters keeps the squares big enough for an old phone. */
  readonly content: string
  /** Edge of the code without its quiet zone; 20 or more. [mm] */
  readonly sizeMm: number
}

export interface QrBlock extends QrCode {
  readonly kind: 'qr'
  readonly caption: string
}

/** The tag tied to the lid: cut out, punched at the hole. */
export interface TagBlock {
  readonly kind: 'tag'
  readonly cutLine: string
  readonly title: string
  readonly big: string
  readonly lines: readonly string[]
}

export interface ColumnsBlock {
  readonly kind: 'columns'
  readonly columns: readonly { readonly share: number; readonly blocks: readonly Block[] }[]
}

export interface RuleBlock {
  readonly kind: 'rule'
}

/** Never split over two pages, unless longer than a page. */
export interface TogetherBlock {
  readonly kind: 'together'
  readonly blocks: readonly Block[]
}

/** A sheet of labels: a grid in millimetres from the sheet's top left corner. */
export interface LabelSheet {
  readonly id: string
  readonly paper: PaperSize
  readonly columnCount: number
  readonly rowCount: number
  readonly widthMm: number
  readonly heightMm: number
  readonly topMm: number
  readonly leftMm: number
  readonly gapXMm: number
  readonly gapYMm: number
  /** True draws the outlines, for plain paper cut by hand. */
  readonly outline: boolean
}

export interface LabelLine {
  readonly text: string
  readonly strength: 'code' | 'strong' | 'plain'
}

export interface Label {
  /** From fullest to shortest: the first that fits its label is printed. Every one must say all that matters. */
  readonly wordings: readonly (readonly LabelLine[])[]
  readonly qr?: QrCode
}

/** Fills whole pages, so it stands alone in its document; no footer is printed over labels. */
export interface LabelsBlock {
  readonly kind: 'labels'
  readonly sheet: LabelSheet
  /** Labels already used up on the first sheet. [count] */
  readonly skipCount: number
  readonly labels: readonly Label[]
}
