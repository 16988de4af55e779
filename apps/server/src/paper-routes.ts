import type { Document } from '@crib/paper'
import { createWords } from '@crib/wording'
import { Hono } from 'hono'
import { HTTPException } from 'hono/http-exception'

/** A document model in, a PDF out. Builders run where the facts are (browser or terminal); this only sets type. */
export function paperRoutes(): Hono {
  const routes = new Hono()
  routes.post('/', async (c) => {
    const document = (await c.req.json().catch(() => null)) as Document | null
    if (!document || typeof document.title !== 'string' || !Array.isArray(document.blocks)) {
      throw new HTTPException(400, { message: createWords().say('common:not-a-document') })
    }
    // Loaded at first use: the typesetter is the slowest import of the server.
    const { renderPdf } = await import('@crib/paper/pdf')
    const pdf = await renderPdf(document, { createdAt: new Date() })
    return c.body(new Uint8Array(pdf).buffer, 200, { 'content-type': 'application/pdf' })
  })
  return routes
}
