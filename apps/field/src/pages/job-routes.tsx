/** The pages of one job, once it has been read from the device. */
import { lazy, use } from 'react';
import { Route, Switch } from 'wouter';
import { SessionContext } from '../session/use-job.tsx';
import { useShop } from '../store/shop-context.ts';
import { EntryPage } from './entry-page.tsx';
import { JobPage } from './job-page.tsx';
import { LinePage } from './line-page.tsx';
import { WalkPage } from './walk-page.tsx';

const HistoryPage = lazy(() => import('./history-page.tsx'));
const LeavingPage = lazy(() => import('./leaving-page.tsx'));
const NameplatePage = lazy(() => import('./nameplate-page.tsx'));
const PlateEntryPage = lazy(() => import('./plate-entry-page.tsx'));
const QuestionsPage = lazy(() => import('./questions-page.tsx'));

export default function JobRoutes({ doc }: { readonly doc: string }) {
  const session = use(useShop().session(doc));
  return (
    <SessionContext value={session}>
      <Switch>
        <Route path="/jobs/:doc" component={JobPage} />
        <Route path="/jobs/:doc/walk" component={WalkPage} />
        <Route path="/jobs/:doc/read/:collection/:id/:field">
          {({ collection, id, field }) => <EntryPage at={{ collection, id, field }} />}
        </Route>
        <Route path="/jobs/:doc/history" component={HistoryPage} />
        <Route path="/jobs/:doc/leaving" component={LeavingPage} />
        <Route path="/jobs/:doc/questions/:station">
          {({ station }) => <QuestionsPage station={station} />}
        </Route>
        <Route path="/jobs/:doc/plate/:collection/:id/all">
          {({ collection, id }) => <PlateEntryPage collection={collection} id={id} />}
        </Route>
        <Route path="/jobs/:doc/plate/:collection/:id">
          {({ collection, id }) => <NameplatePage collection={collection} id={id} />}
        </Route>
        <Route path="/jobs/:doc/working/:finding">
          {({ finding }) => <LinePage working={plain(finding)} />}
        </Route>
        <Route path="/jobs/:doc/:line/ladder">{({ line }) => <LinePage line={line} ladder />}</Route>
        <Route path="/jobs/:doc/:line">{({ line }) => <LinePage line={line} />}</Route>
      </Switch>
    </SessionContext>
  );
}

/** A part of an address as it was before it was written into one; as it stands where it cannot have been. */
function plain(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
