/** Lines of equal temperature through a cross-section, by marching squares over the middles of its cells. */
export interface Section {
  readonly framesC: Float64Array
  readonly nr: number
  readonly nz: number
  readonly rFacesM: readonly number[]
  readonly zFacesM: readonly number[]
}

/** Two ends of a piece, from the axis outward and from the bottom up. [m] */
export type Piece = readonly [fromR: number, fromZ: number, toR: number, toZ: number]

/** Pieces of the line at `levelC`; none where the section is all cooler or all warmer. */
export function contour({ framesC, nr, nz, rFacesM, zFacesM }: Section, levelC: number): readonly Piece[] {
  const middle = (faces: readonly number[], i: number) => (faces[i]! + faces[i + 1]!) / 2
  const pieces: Piece[] = []
  for (let i = 0; i + 1 < nr; i += 1) {
    for (let j = 0; j + 1 < nz; j += 1) {
      const corners = [
        [i, j],
        [i + 1, j],
        [i + 1, j + 1],
        [i, j + 1],
      ] as const
      const cuts: (readonly [number, number])[] = []
      corners.forEach(([ci, cj], k) => {
        const [di, dj] = corners[(k + 1) % 4]!
        const from = framesC[ci * nz + cj]! - levelC
        const to = framesC[di * nz + dj]! - levelC
        if (from < 0 === to < 0) return
        const share = from / (from - to)
        const r = middle(rFacesM, ci)
        const z = middle(zFacesM, cj)
        cuts.push([r + share * (middle(rFacesM, di) - r), z + share * (middle(zFacesM, dj) - z)])
      })
      for (let k = 0; k + 1 < cuts.length; k += 2) {
        pieces.push([cuts[k]![0], cuts[k]![1], cuts[k + 1]![0], cuts[k + 1]![1]])
      }
    }
  }
  return pieces
}
