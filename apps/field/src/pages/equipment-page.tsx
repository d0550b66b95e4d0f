/** One's own library of heaters and pumps: a document of its own on this device, from which jobs copy. */
import { use } from 'react';
import { Route, Switch } from 'wouter';
import { EquipmentEntry } from '../equipment/equipment-entry.tsx';
import { EquipmentItem } from '../equipment/equipment-item.tsx';
import { EquipmentList } from '../equipment/equipment-list.tsx';
import { isEquipment, LIBRARY } from '../equipment/library.ts';
import { SessionContext } from '../session/use-job.tsx';
import { useShop } from '../store/shop-context.ts';
import '../entry/pad.css';
import '../entry/entry.css';
import '../entry/lists.css';
import '../equipment/equipment.css';

export default function EquipmentPage() {
  const session = use(useShop().session(LIBRARY));
  return (
    <SessionContext value={session}>
      <Switch>
        <Route path="/equipment/:kind/:id/:field">
          {({ kind, id, field }) =>
            isEquipment(kind) ? (
              <EquipmentEntry key={field} at={{ collection: kind, id, field }} />
            ) : (
              <EquipmentList />
            )
          }
        </Route>
        <Route path="/equipment/:kind/:id">
          {({ kind, id }) => (isEquipment(kind) ? <EquipmentItem kind={kind} id={id} /> : <EquipmentList />)}
        </Route>
        <Route component={EquipmentList} />
      </Switch>
    </SessionContext>
  );
}
