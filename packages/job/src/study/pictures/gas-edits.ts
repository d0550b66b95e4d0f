/**
 * Drawing the gas piping: what a tap means, as edits of the job. Each is one group that undo takes back whole, and
 * leaves a tree a tree. Ids and readings are made by the caller, who has the clock and the dice.
 */
import type { Edit, Json } from '../../log/index.ts';
import type { HowKnown, Reading } from '../../schema/index.ts';
import { SurveyReader } from '../facts/survey-reader.ts';
import type { JobView } from '../facts/view.ts';
import { gasPlan, type PlannedLoad, SUPPLY } from '../plant/gas/gas-plan.ts';
import { drawnTree, type TreeBranch, type TreeNode } from './gas-tree.ts';

export interface GasPen {
  /** An id that no other device makes too. */
  readonly newId: () => string;
  readonly reading: (made: { value: Reading['value']; how: HowKnown; unit?: string }) => Json;
}

/** A part of the piping that can be taken in hand. */
export interface GasPart {
  readonly type: 'node' | 'section' | 'regulator' | 'heater' | 'appliance' | 'lump';
  readonly id: string;
}

export interface GasChange {
  readonly edits: readonly Edit[];
  /** What to take in hand next. */
  readonly opens?: GasPart;
}

export class GasDrawing {
  readonly #view: JobView;
  readonly #pen: GasPen;

  constructor(view: JobView, pen: GasPen) {
    this.#view = view;
    this.#pen = pen;
  }

  /** A first section from the meter, with the planned heater at its end. */
  begin(): GasChange {
    const plan = this.#plan();
    const loose = plan.segments.find((one) => one.from === '' && one.to === '');
    const heater = plan.loads.find((load) => load.kind === 'heater');
    const id = loose?.id ?? this.#pen.newId();
    const end = heater?.node || this.#pen.newId();
    return {
      edits: [
        ...(loose === undefined ? [add('gasSegments', id)] : []),
        ...this.#ends(id, SUPPLY, end),
        ...(heater === undefined || heater.node !== '' ? [] : [this.#hung(heater, end)]),
      ],
      opens: { type: 'section', id },
    };
  }

  /** A section that begins at a junction; a loose one is taken before a new one. */
  pipe(node: string, loose?: string): GasChange {
    const id = loose ?? this.#pen.newId();
    const free = loose === undefined ? '' : (this.#plan().segments.find((one) => one.id === loose)?.to ?? '');
    const edits = this.#ends(id, node, free === '' || free === node ? this.#pen.newId() : free);
    return {
      edits: loose === undefined ? [add('gasSegments', id), ...edits] : edits,
      opens: { type: 'section', id },
    };
  }

  /** A new appliance at a junction: on it where it is a free end, else at the end of a branch of its own. */
  appliance(node: string): GasChange {
    const id = this.#pen.newId();
    const free = this.#isFree(node);
    const branch = free ? undefined : this.pipe(node);
    const end = branch === undefined ? node : endOf(branch.edits);
    return {
      edits: [
        ...(branch?.edits ?? []),
        add('gasAppliances', id),
        this.#set('gasAppliances', id, 'node', end),
      ],
      opens: { type: 'appliance', id },
    };
  }

  /** Hangs what is there already on a junction. */
  hang(load: Pick<PlannedLoad, 'kind' | 'id'>, node: string): GasChange {
    return { edits: [this.#hung(load, node)], opens: { type: load.kind, id: load.id } };
  }

  /** A section of its own between a junction and what hangs there: a drop, a home run. */
  ownPipe(load: Pick<PlannedLoad, 'kind' | 'id'>, node: string): GasChange {
    const pipe = this.pipe(node);
    return { ...pipe, edits: [...pipe.edits, this.#hung(load, endOf(pipe.edits))] };
  }

  /** Begins a section or regulator, with all that lies behind it, at another junction; never behind itself. */
  move(type: 'section' | 'regulator', id: string, node: string): GasChange {
    const at = this.#find(type, id);
    if (at === undefined || nodes(at.end).some((one) => one.id === node)) return NOTHING;
    const field = at.turned ? 'to' : 'from';
    return { edits: [this.#set(COLLECTION[type], id, field, node)], opens: { type, id } };
  }

  /** A junction in the middle: what is known of the section holds for both halves, the lengths are a first guess. */
  split(segment: string): GasChange {
    const at = this.#find('section', segment);
    if (at === undefined) return NOTHING;
    const [id, node] = [this.#pen.newId(), this.#pen.newId()];
    const record = this.#view.record('gasSegments', segment);
    const copied = ['material', 'size', 'where', 'planned'].flatMap((field) => {
      const reading = record.reading(field);
      return reading === undefined ? [] : [this.#copy(id, field, reading)];
    });
    return {
      edits: [
        { type: 'add', collection: 'gasSegments', element: id, after: segment },
        ...this.#ends(id, node, at.end.id),
        this.#set('gasSegments', segment, at.turned ? 'from' : 'to', node),
        ...copied,
        ...this.#halves(segment, id),
      ],
      opens: { type: 'node', id: node },
    };
  }

  /** A line regulator at the near or the far end of a section. */
  regulator(segment: string, where: 'ahead' | 'behind'): GasChange {
    const at = this.#find('section', segment);
    if (at === undefined) return NOTHING;
    const [id, node] = [this.#pen.newId(), this.#pen.newId()];
    const near = (where === 'ahead') !== at.turned;
    const [from, to] = where === 'ahead' ? [at.near.id, node] : [node, at.end.id];
    return {
      edits: [
        add('gasRegulators', id),
        this.#set('gasRegulators', id, 'from', from),
        this.#set('gasRegulators', id, 'to', to),
        this.#set('gasSegments', segment, near ? 'from' : 'to', node),
      ],
      opens: { type: 'regulator', id },
    };
  }

  /** Takes a section or regulator out and joins its ends: what hung behind it hangs where it began. */
  removeLink(type: 'section' | 'regulator', id: string): GasChange {
    const remove: Edit = { type: 'remove', collection: COLLECTION[type], element: id };
    const at = this.#find(type, id);
    if (at === undefined) return { edits: [remove] };
    const [near, far] = [at.near.id, at.end.id];
    const { segments, regulators, loads } = this.#plan();
    const moved = (collection: string, of: { id: string; from: string; to: string }): Edit[] =>
      of.id === id && collection === COLLECTION[type]
        ? []
        : (['from', 'to'] as const).flatMap((field) =>
            of[field] === far ? [this.#set(collection, of.id, field, near)] : [],
          );
    return {
      edits: [
        remove,
        ...segments.flatMap((one) => moved('gasSegments', one)),
        ...regulators.flatMap((one) => moved('gasRegulators', one)),
        ...loads.filter((load) => load.node === far).map((load) => this.#hung(load, near)),
      ],
      opens: { type: 'node', id: near },
    };
  }

  /** Takes a section or regulator out with all that lies behind it; heaters stay, connected to nothing. */
  removeBeyond(type: 'section' | 'regulator', id: string): GasChange {
    const at = this.#find(type, id);
    if (at === undefined) return { edits: [{ type: 'remove', collection: COLLECTION[type], element: id }] };
    return {
      edits: [
        { type: 'remove', collection: COLLECTION[type], element: id },
        ...nodes(at.end).flatMap((node) => [
          ...node.branches.map(({ link }): Edit => {
            const { id: element } = link.planned;
            return { type: 'remove', collection: COLLECTION[link.type], element };
          }),
          ...node.loads.map((load) => this.#taken(load)),
        ]),
      ],
      opens: { type: 'node', id: at.near.id },
    };
  }

  /** An appliance goes; a heater is only taken off the piping. */
  removeLoad(load: Pick<PlannedLoad, 'kind' | 'id'>): GasChange {
    return { edits: [this.#taken(load)] };
  }

  #plan() {
    return gasPlan(new SurveyReader(this.#view));
  }

  #isFree(node: string): boolean {
    const at = nodes(drawnTree(this.#plan(), undefined).root).find((one) => one.id === node);
    return node !== SUPPLY && at !== undefined && at.branches.length === 0 && at.loads.length === 0;
  }

  #find(type: 'section' | 'regulator', id: string): (TreeBranch & { readonly near: TreeNode }) | undefined {
    for (const near of nodes(drawnTree(this.#plan(), undefined).root)) {
      const branch = near.branches.find(({ link }) => link.type === type && link.planned.id === id);
      if (branch !== undefined) return { ...branch, near };
    }
    return undefined;
  }

  #ends(segment: string, from: string, to: string): Edit[] {
    return [this.#set('gasSegments', segment, 'from', from), this.#set('gasSegments', segment, 'to', to)];
  }

  #set(collection: string, element: string, field: string, value: string): Edit {
    return { type: 'set', collection, element, field, value: this.#pen.reading({ value, how: 'drawing' }) };
  }

  #copy(element: string, field: string, { value, how, unit }: Reading): Edit {
    const reading = this.#pen.reading({ value, how, ...(unit === undefined ? {} : { unit }) });
    return { type: 'set', collection: 'gasSegments', element, field, value: reading };
  }

  /** Half the length each, as assumed, where it was a number. */
  #halves(segment: string, other: string): Edit[] {
    const length = this.#view.record('gasSegments', segment).reading('length');
    if (typeof length?.value !== 'number') return [];
    const { how: _, ...half } = { ...length, value: length.value / 2 };
    return [segment, other].map((id) => this.#copy(id, 'length', { ...half, how: 'assumed' }));
  }

  #hung({ kind, id }: Pick<PlannedLoad, 'kind' | 'id'>, node: string): Edit {
    if (kind === 'lump') return this.#set('gasSupply', '-', 'existingLoadAt', node);
    return this.#set(kind === 'heater' ? 'heaters' : 'gasAppliances', id, 'node', node);
  }

  #taken({ kind, id }: Pick<PlannedLoad, 'kind' | 'id'>): Edit {
    if (kind === 'appliance') return { type: 'remove', collection: 'gasAppliances', element: id };
    return kind === 'heater'
      ? { type: 'set', collection: 'heaters', element: id, field: 'node', value: null }
      : { type: 'set', collection: 'gasSupply', field: 'existingLoadAt', value: null };
  }
}

const NOTHING: GasChange = { edits: [] };

const COLLECTION = { section: 'gasSegments', regulator: 'gasRegulators' } as const;

function add(collection: string, element: string): Edit {
  return { type: 'add', collection, element };
}

/** The junction that the edits of a new section end it at. */
function endOf(edits: readonly Edit[]): string {
  const to = edits.find((edit) => edit.type === 'set' && edit.field === 'to');
  const value = to?.type === 'set' ? to.value : undefined;
  return typeof value === 'object' && value !== null && 'value' in value ? String(value['value']) : '';
}

/** A junction and all behind it. */
function nodes(root: TreeNode): TreeNode[] {
  return [root, ...root.branches.flatMap(({ end }) => nodes(end))];
}
