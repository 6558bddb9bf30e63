import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { fieldLabel } from '../../../shared/record/field-words/tell-field.js';
import { pressedNow } from '../device/pressed-now.js';
import { Button } from '../look/button.js';
import { UndoStrip } from '../look/notes.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import { type Item, itemsAt, newId } from './edit-document.js';
import { LazyFold } from './lazy-fold.js';
import { nameItem, tellItem } from './name-item.js';
import { useEditor } from './section-editor.js';

interface Removed {
  readonly item: Item;
  readonly place: number;
  readonly name: string;
}

interface ItemListProps {
  readonly path: string;
  /** The questions about an item, given the path at which it stands. */
  readonly children: (item: Item, at: string) => ComponentChildren;
}

/** People, craft, calls: each behind its name, added and removed, with the way back. */
export function ItemList({ path, children }: ItemListProps) {
  const { section, document, set, timeZone, choices } = useEditor();
  const [added, setAdded] = useState<string | null>(null);
  const [removed, setRemoved] = useState<Removed | null>(null);
  const items = itemsAt(document, path);
  const label = fieldLabel(section, path, language()) ?? path;
  const one = fieldLabel(section, `${path}/*`, language()) ?? label;
  const nameOf = (item: Item, place: number): string => nameItem(item, `${one} ${place + 1}`, choices);
  const add = (): void => {
    const id = newId(path.slice(path.lastIndexOf('/') + 1));
    set(path, [...items, newItem(path, id)]);
    setAdded(id);
  };
  const remove = (item: Item, place: number): void => {
    setRemoved({ item, place, name: nameOf(item, place) });
    set(path, items.toSpliced(place, 1));
  };
  const bringBack = ({ item, place }: Removed): void => {
    set(path, items.toSpliced(place, 0, item));
    setRemoved(null);
  };
  return (
    <div class="item-list" data-path={path} role="group" aria-label={label}>
      <p class="group-title">{label}</p>
      {items.length === 0 && <p class="quiet">{say.none}</p>}
      {items.map((item, place) => (
        <LazyFold
          key={item.id}
          name="item"
          paths={[`${path}/${item.id}`]}
          startsOpen={item.id === added || (items.length === 1 && path === '/entries')}
          title={
            <>
              {nameOf(item, place)}
              <small>{tellItem(section, path, item, timeZone)}</small>
            </>
          }
        >
          {() => (
            <div class="item-body" data-path={`${path}/${item.id}`}>
              {children(item, `${path}/${item.id}`)}
              <Button look="plain" onPress={() => remove(item, place)}>
                {say.removeOf(nameOf(item, place))}
              </Button>
            </div>
          )}
        </LazyFold>
      ))}
      {removed !== null && <UndoStrip undo={() => bringBack(removed)}>{say.removed(removed.name)}</UndoStrip>}
      <Button onPress={add}>{say.add(one)}</Button>
    </div>
  );
}

/** A line of the timeline is most often written while it happens: its time is pressed, and can be changed. */
function newItem(list: string, id: string): Item {
  return list === '/entries' ? { id, at: { ...pressedNow() } } : { id };
}
