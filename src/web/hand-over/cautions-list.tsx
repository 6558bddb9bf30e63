import { Button } from '../look/button.js';
import { tellRecorded } from '../look/tell-recorded.js';
import { handOver as say } from '../words/hand-over.js';
import type { PreviewAnswer } from './hand-over-answers.js';
import { nameField, nameKind } from './name-items.js';
import { choose } from './packet-draft.js';
import type { PreviewProps } from './preview-props.js';

/** Texts that may tell what the profile keeps: each is read, and then held back or let go. */
export function CautionsList({ preview, draft, onChange, pressed }: PreviewProps & { pressed: boolean }) {
  const unread = unreadIn(preview, draft.read);
  if (preview.cautions.length === 0) return null;
  return (
    <div class="cautions">
      <h3>{say.cautions}</h3>
      <p>{say.cautionsLead}</p>
      <p role="status">{unread.length === 0 ? say.allRead : say.unread(unread.length)}</p>
      {pressed && unread.length > 0 && <p class="fault">{say.readFirst}</p>}
      <ul class="items">
        {textsIn(preview).map(({ what, section, path, found }) => {
          const name = nameField({ section, path });
          const value = preview.fields.find((one) => `${one.section}:${one.path}` === what)?.value;
          return (
            <li class="item" key={what}>
              <p class="item-name">{name}</p>
              <p class="item-value">{value === undefined ? null : tellRecorded(value, { section, path })}</p>
              <ul>
                {found.map(({ tells, said }) => (
                  <li key={tells}>
                    <mark>{said}</mark> {say.mayTell(nameKind(tells, preview))}
                  </li>
                ))}
              </ul>
              {draft.read.includes(what) ? (
                <p>
                  {say.wasRead}{' '}
                  <Button
                    look="plain"
                    label={say.unreadAgain(name)}
                    onPress={() => onChange({ ...draft, read: draft.read.filter((one) => one !== what) })}
                  >
                    {say.unreadIt}
                  </Button>
                </p>
              ) : (
                <p class="links-line">
                  <Button
                    label={say.holdAllBack(name)}
                    onPress={() => onChange(choose(draft, what, 'stays'))}
                  >
                    {say.holdBack}
                  </Button>
                  <Button
                    look="plain"
                    label={say.readIt(name)}
                    onPress={() => onChange({ ...draft, read: [...draft.read, what] })}
                  >
                    {say.mayLeave}
                  </Button>
                </p>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** Texts of which nobody has said yet whether they may leave. */
export function unreadIn(preview: PreviewAnswer, read: readonly string[]): string[] {
  return textsIn(preview).flatMap(({ what }) => (read.includes(what) ? [] : [what]));
}

/** Each text once, with everything that was found in it. */
function textsIn({ cautions }: PreviewAnswer) {
  const whats = new Set(cautions.map(({ section, path }) => `${section}:${path}`));
  return [...whats].map((what) => {
    const found = cautions.filter(({ section, path }) => `${section}:${path}` === what);
    const colon = what.indexOf(':');
    return { what, section: what.slice(0, colon), path: what.slice(colon + 1), found };
  });
}
