import { serveStatic } from '@hono/node-server/serve-static'
import { Hono } from 'hono'

const YEAR_S = 31_536_000

/** The built screens. Hashed files may be kept for ever; the page and the service worker are asked for each time. */
export function webRoutes(webDist: string): Hono {
  const routes = new Hono()
  routes.use(
    '*',
    serveStatic({
      root: webDist,
      onFound: (path, c) => {
        const hashed = path.includes('/assets/')
        c.header('cache-control', hashed ? `public, max-age=${YEAR_S}, immutable` : 'no-cache')
      },
    }),
  )
  // Any other address is a screen of the app: the page reads it.
  routes.get('*', serveStatic({ root: webDist, path: 'index.html' }))
  return routes
}
