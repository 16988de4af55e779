/** Reads the project's bibliography: BibTeX with one field a line. */
export interface Source {
  readonly title: string
  readonly author?: string
  readonly year?: string
  readonly url?: string
  readonly note?: string
}

/** BibTeX as this project writes it: one field a line, values in braces or quotes, nested braces allowed. */
export function readBib(bib: string): Record<string, Source> {
  const found: Record<string, Source> = {}
  for (const [, key = '', body = ''] of bib.matchAll(/@\w+\s*\{\s*([^,\s]+)\s*,([\s\S]*?)\n\}/g)) {
    const fields: Record<string, string> = {}
    for (const [, name = '', value = ''] of body.matchAll(/^\s*(\w+)\s*=\s*(.+?),?\s*$/gm)) {
      fields[name.toLowerCase()] = value
        .replace(/^[{"]+|[}"]+$/g, '')
        .replace(/[{}]/g, '')
        .trim()
    }
    const url = fields.url ?? /https?:\/\/[^\s}]+/.exec(fields.howpublished ?? '')?.[0]
    found[key] = {
      title: fields.title ?? key,
      ...(fields.author && { author: fields.author }),
      ...(fields.year && { year: fields.year }),
      ...(url && { url }),
      ...(fields.note && { note: fields.note }),
    }
  }
  return found
}
