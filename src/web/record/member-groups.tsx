import { fieldLabel } from '../../../shared/record/field-words/tell-field.js';
import { typesAbout } from '../../../shared/record/kind-questions.js';
import type { Shape } from '../../../shared/wire/record-members.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import { type Item, valueAt } from './edit-document.js';
import { ItemList } from './item-list.js';
import { LazyFold } from './lazy-fold.js';
import { MemberField } from './member-field.js';
import { orderMembers, type PlacedMember } from './order-members.js';
import { useEditor } from './section-editor.js';

/** The questions of a section, of an item or of a part: those of the kind of craft first, rare ones behind their title. */
export function MemberGroups({ shape, path, item }: { shape: Shape; path: string; item?: Item }) {
  const { section, document, craft, lacking } = useEditor();
  const types = typesAbout(craft, item);
  const { ofKind, first, more, parts, lists } = orderMembers(section, shape, path, types, lacking);
  const answered = (members: readonly PlacedMember[]): number =>
    members.filter((one) => valueAt(document, one.path) !== undefined).length;
  // A part without a first question has nothing to hide the rest behind.
  const isShort = ofKind.length + first.length === 0 && lists.length === 0;
  return (
    <div class="members">
      {ofKind.length > 0 && (
        <div class="of-kind">
          <p class="group-title">{say.ofKind}</p>
          <Fields members={ofKind} />
        </div>
      )}
      <Fields members={isShort ? more : first} />
      {lists.map(({ name, path: list, member }) =>
        'shape' in member ? (
          <ItemList key={name} path={list}>
            {(one, at) => <MemberGroups shape={member.shape()} path={at} item={one} />}
          </ItemList>
        ) : null,
      )}
      {parts.map(({ name, path: part, member }) =>
        'shape' in member ? (
          <LazyFold
            key={name}
            paths={[part]}
            startsOpen={valueAt(document, part) !== undefined && path === ''}
            title={fieldLabel(section, part, language())}
          >
            {() => <MemberGroups shape={member.shape()} path={part} />}
          </LazyFold>
        ) : null,
      )}
      {!isShort && more.length > 0 && (
        <LazyFold paths={more.map((one) => one.path)} title={say.more(more.length, answered(more))}>
          {() => <Fields members={more} />}
        </LazyFold>
      )}
    </div>
  );
}

function Fields({ members }: { members: readonly PlacedMember[] }) {
  return (
    <>
      {members.map((member) => (
        <MemberField key={member.path} {...member} />
      ))}
    </>
  );
}
