import { createWords } from '@crib/wording'
import { Hono } from 'hono'
import { HTTPException } from 'hono/http-exception'

const HTTP_STATUS = { reckoned: 200, refused: 200, 'bad-input': 400, 'unknown-calc': 404 } as const

/** Every public calculation, made from the catalogue. It is loaded at first use: opening the book needs none of it. */
export function calcRoutes(): Hono {
  const words = createWords()
  const routes = new Hono()

  routes.get('/', async (c) => {
    const { CATALOGUE } = await import('@crib/catalogue')
    return c.json(CATALOGUE.map(({ run: _run, ...listed }) => listed))
  })

  routes.post('/:id', async (c) => {
    const given = await c.req.json().catch(() => {
      throw new HTTPException(400, { message: words.say('common:not-json') })
    })
    const { reckonById } = await import('@crib/catalogue')
    const reckoning = reckonById(c.req.param('id'), given, words)
    return c.json(reckoning, HTTP_STATUS[reckoning.kind])
  })

  return routes
}
