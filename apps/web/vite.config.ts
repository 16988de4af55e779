import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

/** Our packages only define things: what a screen does not use need not travel with it. */
const treeshake = { moduleSideEffects: [{ test: /\/packages\/[a-z]+\/src\//, sideEffects: false }] }

export default defineConfig({
  root: import.meta.dirname,
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    manifest: true,
    rolldownOptions: { treeshake },
  },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  server: { proxy: { '/api': 'http://127.0.0.1:7440' } },
  plugins: [
    react(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      strategies: 'injectManifest',
      srcDir: 'src',
      filename: 'sw.ts',
      injectManifest: {
        rollupFormat: 'iife',
        globPatterns: ['**/*.{js,css,html,svg,woff2}'],
        maximumFileSizeToCacheInBytes: 8e6,
      },
      manifest: {
        name: 'Kettle & Crib',
        short_name: 'Kettle & Crib',
        description: 'One book and one set of honest numbers, from seed ear to jar and back to seed.',
        start_url: '/',
        display: 'standalone',
        theme_color: '#e4d8c0',
        background_color: '#fbf6ea',
        icons: [{ src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
    }),
  ],
})
