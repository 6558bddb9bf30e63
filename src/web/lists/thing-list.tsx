import type { ComponentChildren } from 'preact';
import { Link } from 'wouter-preact';
import type { Asked } from '../ask/use-ask.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import './lists.css';

interface ThingListProps<Item> {
  readonly asked: Asked<readonly Item[]>;
  readonly empty: string;
  readonly lineOf: (item: Item) => {
    readonly href: string;
    readonly name: string;
    readonly about: ComponentChildren;
    readonly state?: ComponentChildren;
  };
}

/** A list of things that lead to their pages, in each of its states. */
export function ThingList<Item extends { readonly id: string }>({
  asked,
  empty,
  lineOf,
}: ThingListProps<Item>) {
  const { data, error, again } = asked;
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  if (data.length === 0) return <Empty>{empty}</Empty>;
  return (
    <ul class="thing-list">
      {data.map((item) => {
        const { href, name, about, state } = lineOf(item);
        return (
          <li key={item.id}>
            <Link href={href}>
              <span class="thing-name">{name}</span>
              {state !== undefined && <span class="thing-state">{state}</span>}
              <span class="thing-about">{about}</span>
            </Link>
          </li>
        );
      })}
    </ul>
  );
}
