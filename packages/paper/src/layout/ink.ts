/** What is drawn, in points from the page's top left corner: the only thing the painter knows. */
export type Face = 'text' | 'text-strong' | 'display'

/** 0 is black, 1 is white. */
export type Grey = number

export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export interface TextInk {
  readonly ink: 'text'
  readonly text: string
  readonly face: Face
  readonly sizePt: number
  readonly grey: Grey
  readonly x: number
  readonly baselineY: number
  /** Room this line was given; its letters may not leave it. */
  readonly box: Box
}

interface LineInk {
  readonly ink: 'line'
  readonly points: readonly (readonly [number, number])[]
  readonly widthPt: number
  readonly grey: Grey
  readonly dashPt?: number
  readonly closed?: true
}

interface RectInk {
  readonly ink: 'rect'
  readonly box: Box
  readonly fill?: Grey
  readonly strokePt?: number
}

interface CircleInk {
  readonly ink: 'circle'
  readonly x: number
  readonly y: number
  readonly radius: number
  readonly strokePt: number
}

export interface SquaresInk {
  readonly ink: 'squares'
  readonly box: Box
  readonly rows: readonly (readonly boolean[])[]
}

export type Ink = TextInk | LineInk | RectInk | CircleInk | SquaresInk

export const BLACK: Grey = 0
/** For what stands second: still 7:1 on white. */
export const DARK: Grey = 0.3
export const HAIR: Grey = 0.55
export const TINT: Grey = 0.92
