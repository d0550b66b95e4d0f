/** The addresses of the app: three levels, each with an address of its own. */
import type { Reader } from '@firstfire/words';
import { lazy, Suspense, use, useMemo } from 'react';
import { Route, Switch } from 'wouter';
import { JobsPage } from './pages/jobs-page.tsx';
import { readerOf, settings } from './settings/settings.ts';
import type { Shop } from './store/shop.ts';
import { ShopContext } from './store/shop-context.ts';
import { useSignal } from './store/use-signal.ts';
import { AppText } from './text/app-text.ts';
import { TextContext } from './text/use-text.tsx';
import { UpdateBar } from './update/update-bar.tsx';

const JobRoutes = lazy(() => import('./pages/job-routes.tsx'));
const NewPage = lazy(() => import('./pages/new-page.tsx'));
const SettingsPage = lazy(() => import('./pages/settings-page.tsx'));
const EquipmentPage = lazy(() => import('./pages/equipment-page.tsx'));
const KeepingPage = lazy(() => import('./pages/keeping-page.tsx'));

export function App({ shop }: { readonly shop: Shop }) {
  const chosen = useSignal(settings);
  const reader = useMemo(() => readerOf(chosen), [chosen]);
  return (
    <ShopContext value={shop}>
      <Suspense>
        <Pages reader={reader} />
      </Suspense>
    </ShopContext>
  );
}

function Pages({ reader: coming }: { readonly reader: Promise<Reader> }) {
  const reader = use(coming);
  const text = useMemo(() => new AppText(reader), [reader]);
  return (
    <TextContext value={text}>
      <UpdateBar />
      <Suspense>
        <Switch>
          <Route path="/" component={JobsPage} />
          <Route path="/new" component={NewPage} />
          <Route path="/settings" component={SettingsPage} />
          <Route path="/keeping" component={KeepingPage} />
          <Route path="/equipment/*?" component={EquipmentPage} />
          <Route path="/jobs/:doc/*?">{({ doc }) => <JobRoutes key={doc} doc={doc} />}</Route>
          <Route component={JobsPage} />
        </Switch>
      </Suspense>
    </TextContext>
  );
}
