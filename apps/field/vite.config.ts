/** How the app is built: one entry, the study and each language in pieces of their own, nothing from elsewhere. */
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

export default defineConfig({
  plugins: [
    react(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff2,json}'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        navigateFallback: '/index.html',
        cleanupOutdatedCaches: true,
        clientsClaim: true,
      },
      manifest: {
        name: 'Firstfire',
        short_name: 'Firstfire',
        description: 'Survey and plan gas-fired pool and spa heaters, with no signal.',
        display: 'standalone',
        start_url: '/',
        background_color: '#ffffff',
        theme_color: '#0e1b20',
        icons: [{ src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
    }),
  ],
  build: { target: 'es2023', chunkSizeWarningLimit: 1200, modulePreload: { polyfill: false } },
});
