import type { PaperDocument } from '@crib/paper'
import { createWords } from '@crib/wording'
import { Hono } from 'hono'
import { HTTPException } from 'hono/http-exception'

/** A document model in, a PDF out. Builders run where the facts are (browser or terminal); this only sets type: `?print=large` sets it large. */
export function paperRoutes(): Hono {
  const routes = new Hono()
  routes.post('/', async (c) => {
    const print = c.req.query('print')
    if (print !== undefined && print !== 'large')
      throw new HTTPException(400, { message: createWords().say('common:not-a-print', { given: print }) })
    const document = await c.req.json().catch(() => null)
    if (!isDocument(document)) throw new HTTPException(400, { message: createWords().say('common:not-a-document') })
    // Loaded at first use: the typesetter is the slowest import of the server.
    const { renderPdf } = await import('@crib/paper/pdf')
    const pdf = await renderPdf(print === 'large' ? { ...document, largePrint: true } : document).catch(
      (error: unknown) => {
        // What the document itself asks for and cannot have: an unknown date, a label too small for its words.
        if (error instanceof RangeError) throw new HTTPException(400, { message: error.message })
        throw error
      },
    )
    return c.body(new Uint8Array(pdf).buffer, 200, { 'content-type': 'application/pdf' })
  })
  return routes
}

function isDocument(given: unknown): given is PaperDocument {
  if (typeof given !== 'object' || given === null) return false
  const { title, blocks, footer, madeAt } = given as Partial<PaperDocument>
  return typeof title === 'string' && typeof madeAt === 'string' && typeof footer === 'object' && Array.isArray(blocks)
}
