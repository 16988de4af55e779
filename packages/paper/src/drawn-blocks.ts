/** Blocks that are drawn and not set: a plot of ground, curves over time, a jar cut open. Leaves out: how (layout, html). */
export interface PlotRow {
  /** From the upper edge. [m] */
  readonly acrossM: number
  /** Hills from the left edge; absent: the row is a line. [m] */
  readonly hillsM?: readonly number[]
}

/** A plot of ground drawn to scale, its rows from left to right. */
export interface PlotBlock {
  readonly kind: 'plot'
  /** Along the rows. [m] */
  readonly lengthM: number
  /** Across the rows. [m] */
  readonly widthM: number
  /** 1 to so many. */
  readonly scale: number
  readonly rows: readonly PlotRow[]
  /** Length of the bar of scale, on the ground. [m] */
  readonly barM: number
  readonly lengthText: string
  readonly widthText: string
  readonly scaleText: string
  readonly northText: string
  /** What it shows, for whoever cannot see it. */
  readonly alt: string
  /** Where north lies, clockwise from the right of the sheet; absent: none is drawn. [°] */
  readonly northDeg?: number
  /** Arrows outward with a short mark, clockwise from the right of the sheet. [°] */
  readonly towards: readonly { readonly deg: number; readonly mark: string }[]
}

export interface DrawnAxis {
  readonly min: number
  readonly max: number
  /** Rising; those without room for their words are left out. */
  readonly ticks: readonly { readonly at: number; readonly text: string }[]
}

export interface DrawnLine {
  /** In the key below. */
  readonly name: string
  readonly stroke: 'heavy' | 'plain' | 'dashed' | 'dotted'
  /** Across and up, in the axes' own numbers. */
  readonly points: readonly (readonly [across: number, up: number])[]
}

/** Lines over time, told apart by their stroke and named in a key; perhaps a hatched band, and moments numbered from 1. */
export interface CurvesBlock {
  readonly kind: 'curves'
  /** Between the axes. [mm] */
  readonly heightMm: number
  readonly across: DrawnAxis
  readonly up: DrawnAxis
  /** The same height in another unit, at the right. */
  readonly upAlso: DrawnAxis
  readonly lines: readonly DrawnLine[]
  readonly band?: {
    readonly name: string
    readonly points: readonly (readonly [across: number, low: number, high: number])[]
  }
  readonly marks: readonly number[]
  /** What it shows, for whoever cannot see it. */
  readonly alt: string
}

/** A jar cut down its middle, in greys: the lighter the hotter. */
export interface CutJarBlock {
  readonly kind: 'cut-jar'
  /** [mm] */
  readonly heightMm: number
  /** Edges from the axis outward and from the bottom up, rising. [m] */
  readonly ringsM: readonly number[]
  readonly levelsM: readonly number[]
  /** Grey step of each cell, from 0: ring i, level j at i × levels + j. */
  readonly steps: readonly number[]
  /** What each grey stands for, coolest first. */
  readonly scale: readonly string[]
  /** True where kernels lie loose inside. */
  readonly isLoose: boolean
  readonly alt: string
}
