/**
 * The whole piping, drawn and listed in one: the way to the heater runs straight down, branches stand beside it, each
 * pipe as thick as its size. Every row is a button; the nested lists say the same to someone who listens.
 */
import type {
  GasBranch,
  GasHung,
  GasLink,
  GasNode,
  GasPart,
  GasPicture,
  GasState,
  JobView,
} from '@firstfire/job';
import { readingText } from '../entry/reading.ts';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { lengthText, pressure, sizeText } from './figures.ts';
import { hungName, nodeLabel } from './names.ts';
import { thicknessOf } from './stair.ts';

export interface TreeProps {
  readonly picture: GasPicture;
  readonly state: GasState;
  readonly part: GasPart | undefined;
  readonly onTake: (part: GasPart | undefined) => void;
}

export function Tree(props: TreeProps) {
  const text = useText();
  const { picture } = props;
  const { links, hung } = picture.loose;
  return (
    <>
      <Line node={picture.root} {...props} label={text.phrase('gas.piping')} />
      {picture.closing.length > 0 && (
        <Extra title={text.phrase('gas.closing')} links={picture.closing} hung={[]} {...props} />
      )}
      {links.length + hung.length > 0 && (
        <Extra title={text.phrase('gas.loose')} links={links} hung={hung} {...props} />
      )}
    </>
  );
}

type LineProps = TreeProps & {
  readonly node: GasNode;
  /** The section a branch begins with. */
  readonly first?: GasLink;
  readonly label?: string;
};

/** One straight line: junctions and sections one after another; at each junction its other branches. */
function Line({ node, first, label, ...props }: LineProps) {
  const items = itemsOf(node);
  return (
    <ol className={first === undefined ? 'gas-line' : 'gas-line branch'} aria-label={label}>
      {first !== undefined && <LinkItem link={first} {...props} />}
      {items.map((item, i) =>
        'end' in item ? (
          <LinkItem key={`${item.link.type} ${item.link.id}`} link={item.link} {...props} />
        ) : (
          <NodeItem key={item.id} node={item} into={linkBefore(items, i) ?? first} {...props} />
        ),
      )}
    </ol>
  );
}

function linkBefore(items: readonly (GasNode | GasBranch)[], i: number): GasLink | undefined {
  const before = items[i - 1];
  return before !== undefined && 'end' in before ? before.link : undefined;
}

function itemsOf(node: GasNode): readonly (GasNode | GasBranch)[] {
  const on = node.branches.at(-1);
  return on === undefined ? [node] : [node, on, ...itemsOf(on.end)];
}

type ItemProps = TreeProps;

type NodeProps = ItemProps & {
  readonly node: GasNode;
  /** The section it is reached by. */
  readonly into: GasLink | undefined;
};

function NodeItem({ node, into, ...props }: NodeProps) {
  const text = useText();
  const { view } = useMoment();
  const { picture, state } = props;
  const value = node.pressures[state];
  const only = node.branches.length === 0 && node.hung.length === 1 ? node.hung[0] : undefined;
  const on = node.branches.at(-1);
  return (
    <li
      className={`gas-node${on === undefined ? ' last' : ''}`}
      style={{ ...thick(on?.link), ...thick(into, '--gas-into') }}
    >
      <Row
        {...props}
        part={only === undefined ? { type: 'node', id: node.id } : { type: only.kind, id: only.id }}
        taken={props.part}
      >
        <span className={node.leads ? 'gas-dot-mark leads' : 'gas-dot-mark'} />
        <span className="gas-row-name">
          {nodeLabel(node, text, picture.metered)}
          {only !== undefined && <small> {inputText(only, { view, text })}</small>}
        </span>
        <span className="gas-row-figure">{value === undefined ? '?' : pressure(value, text)}</span>
      </Row>
      {only === undefined && node.hung.length > 0 && (
        <ul className="gas-hung">
          {node.hung.map((one) => (
            <HungItem key={`${one.kind} ${one.id}`} hung={one} {...props} />
          ))}
        </ul>
      )}
      {node.branches.slice(0, -1).map(({ link, end }) => (
        <Line key={`${link.type} ${link.id}`} node={end} first={link} {...props} />
      ))}
    </li>
  );
}

function LinkItem({ link, ...props }: ItemProps & { readonly link: GasLink }) {
  const text = useText();
  const { view } = useMoment();
  return (
    <li className="gas-link" style={thick(link)}>
      <Row
        {...props}
        part={{ type: link.type === 'regulator' ? 'regulator' : 'section', id: link.id }}
        taken={props.part}
      >
        {link.type === 'regulator' && <span className="gas-regulator-mark" />}
        <span className="gas-row-name">
          {link.type === 'regulator' ? (
            <b>{link.name || text.phrase('gas.regulator')}</b>
          ) : (
            <>
              <b>{link.size === undefined ? text.phrase('gas.section') : sizeText(link.size)}</b> ·{' '}
              {lengthText(link, view, text)}
              {link.name !== '' && <small> {link.name}</small>}
            </>
          )}
        </span>
        <LinkFigure link={link} />
      </Row>
    </li>
  );
}

/** Its margin by the code; what it lacks comes first. */
function LinkFigure({ link: { missing, code } }: { readonly link: GasLink }) {
  const text = useText();
  if (missing.length > 0) return <span className="gas-row-figure">? {missing.length}</span>;
  if (code === undefined) return null;
  const margin = text.margin(code);
  return (
    <span className={code.verdict === 'fails' ? 'gas-row-figure plate' : 'gas-row-figure'}>
      {margin || text.verdict(code.verdict)}
    </span>
  );
}

function HungItem({ hung, ...props }: ItemProps & { readonly hung: GasHung }) {
  const text = useText();
  const { view } = useMoment();
  return (
    <li>
      <Row {...props} part={{ type: hung.kind, id: hung.id }} taken={props.part}>
        <span className="gas-row-name">{hungName(hung, text)}</span>
        <span className="gas-row-figure">{inputText(hung, { view, text })}</span>
      </Row>
    </li>
  );
}

type ExtraProps = ItemProps & {
  readonly title: string;
  readonly links: readonly GasLink[];
  readonly hung: readonly GasHung[];
};

/** What stands in no tree: loose parts, and sections that close a loop. */
function Extra({ title, links, hung, ...props }: ExtraProps) {
  return (
    <section className="gas-loose">
      <h3>{title}</h3>
      <ul className="gas-hung">
        {links.map((link) => (
          <LinkItem key={link.id} link={link} {...props} />
        ))}
        {hung.map((one) => (
          <HungItem key={`${one.kind} ${one.id}`} hung={one} {...props} />
        ))}
      </ul>
    </section>
  );
}

interface RowProps extends Pick<TreeProps, 'onTake'> {
  readonly part: GasPart;
  readonly taken: GasPart | undefined;
  readonly children: React.ReactNode;
}

function Row({ part, taken, onTake, children }: RowProps) {
  const isTaken = taken?.type === part.type && taken.id === part.id;
  return (
    <button
      type="button"
      className="gas-row"
      id={`gas-${part.type}-${part.id}`}
      aria-pressed={isTaken}
      onClick={() => onTake(isTaken ? undefined : part)}
    >
      {children}
    </button>
  );
}

function thick(link: GasLink | undefined, name = '--gas-thick'): React.CSSProperties {
  return { [name]: `${link === undefined ? 0 : thicknessOf(link.bore)}px` } as React.CSSProperties;
}

/** As it was read. */
function inputText({ input, inputReading }: GasHung, { view, text }: Told): string {
  const [collection = '', id = '', field = ''] = inputReading.split('/');
  const reading = view.record(collection, id).reading(field);
  return input === undefined || reading === undefined ? '?' : readingText(reading, text);
}

interface Told {
  readonly view: JobView;
  readonly text: ReturnType<typeof useText>;
}
