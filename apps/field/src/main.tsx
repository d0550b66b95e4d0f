/** Where the app begins: the store is opened first, for everything on the screen comes from it. */
import { createRoot } from 'react-dom/client';
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './styles/base.css';
import { App } from './app.tsx';
import { openShop } from './store/shop.ts';
import { registerServiceWorker } from './update/service-worker.ts';

const root = document.getElementById('app');
if (root === null) throw new Error('the page has no place for the app');
createRoot(root).render(<App shop={openShop()} />);
void registerServiceWorker();
