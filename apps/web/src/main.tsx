import './look/all.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'
import { BookProvider } from './book/book-provider.tsx'
import { registerServiceWorker } from './shell/newer-version.ts'
import { rememberedTheme, showTheme } from './theme.ts'

showTheme(rememberedTheme())
const root = document.getElementById('book')
if (!root) throw new Error('the page has no element named book')
createRoot(root).render(
  <StrictMode>
    <BookProvider>
      <App />
    </BookProvider>
  </StrictMode>,
)
registerServiceWorker().catch((error: unknown) => console.error(error))
