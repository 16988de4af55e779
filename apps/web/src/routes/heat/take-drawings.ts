/** Drawings of the page as one file that needs nothing of the page: colours by value, words with their face, title and remarks. */
const PAPER_COLOURS: Readonly<Record<string, string>> = {
  '--paper': '#ffffff',
  '--ink': '#231a12',
  '--twine': '#7d5f33',
  '--rule': '#d3c4a3',
  '--handle': '#7c2710',
  '--focus': '#1f3f8f',
  '--corn-fill': '#d9a441',
  '--kernel-line': '#8a5a12',
}
const STYLE = `text{font:400 15px Verdana,sans-serif;fill:#231a12}.heat-strong{font-weight:700}
.heat-on-colour{paint-order:stroke;stroke:#ffffff;stroke-width:4px;font-weight:700}
.heat-line-under{fill:none;stroke:#ffffff;stroke-width:3.5}.heat-line-over{fill:none;stroke:#231a12;stroke-width:1.5}`

export interface DrawnSheet {
  readonly svg: string
  readonly width: number
  readonly height: number
}

const MARGIN = 24
const LINE = 24
/** Letters to a line at 15 px, on the narrow side. */
const LETTER_PX = 8.6

/** @throws {Error} where there is nothing to take. */
export function sheetOfDrawings(
  drawings: readonly SVGSVGElement[],
  title: string,
  remarks: readonly string[],
): DrawnSheet {
  if (drawings.length === 0) throw new Error('there is no drawing on this page yet')
  const boxes = drawings.map((drawing) => drawing.viewBox.baseVal)
  const width = boxes.reduce((sum, box) => sum + box.width + MARGIN, MARGIN)
  const tallest = Math.max(...boxes.map(({ height }) => height))
  const lines = remarks.flatMap((remark) => wrapped(remark, Math.floor((width - 2 * MARGIN) / LETTER_PX)))
  const top = 2 * MARGIN + LINE
  const height = top + tallest + LINE * (lines.length + 1) + MARGIN
  let left = MARGIN
  const placed = drawings.map((drawing, i) => {
    const box = boxes[i]!
    const inner = drawing.innerHTML.replaceAll(
      /var\((--[a-z-]+)\)/g,
      (_, name: string) => PAPER_COLOURS[name] ?? '#000000',
    )
    const x = left
    left += box.width + MARGIN
    return `<svg x="${x}" y="${top}" width="${box.width}" height="${box.height}" viewBox="${box.x} ${box.y} ${box.width} ${box.height}">${inner}</svg>`
  })
  const words = lines.map((line, i) => text(MARGIN, top + tallest + LINE * (i + 1.2), line, ''))
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><style>${STYLE}</style><rect width="${width}" height="${height}" fill="#ffffff"/>${text(MARGIN, MARGIN + LINE, title, ' class="heat-strong" style="font-size:22px"')}${placed.join('')}${words.join('')}</svg>`
  return { svg, width, height }
}

function text(x: number, y: number, words: string, more: string): string {
  const escaped = words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
  return `<text x="${x}" y="${y}"${more}>${escaped}</text>`
}

function wrapped(words: string, most: number): string[] {
  const lines: string[] = []
  for (const word of words.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + word.length + 1 <= most) lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}

/** Twice as many points as the drawing has, for a sharp print. */
export async function pngOf({ svg, width, height }: DrawnSheet): Promise<Blob> {
  const image = new Image()
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`
  await image.decode()
  const canvas = document.createElement('canvas')
  canvas.width = 2 * width
  canvas.height = 2 * height
  const brush = canvas.getContext('2d')
  if (!brush) throw new Error('this browser draws no images')
  brush.drawImage(image, 0, 0, canvas.width, canvas.height)
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'))
  if (!blob) throw new Error('this browser made no image')
  return blob
}

export function handOver(name: string, content: string | Blob, type: string): void {
  const url = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  // Some browsers still read it after the click.
  setTimeout(() => URL.revokeObjectURL(url), 60_000)
}
