import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { tellRecorded } from '../look/tell-recorded.js';
import { handOver as say } from '../words/hand-over.js';
import { FileItems } from './file-items.js';
import type { FieldView, OtherView } from './hand-over-answers.js';
import { mayChoose, nameField, nameKind } from './name-items.js';
import { choose } from './packet-draft.js';
import { type PreviewProps, SIGNS } from './preview-props.js';
import { TurnButton } from './turn-button.js';

const DOES = ['goes', 'masked', 'stays'] as const;

/** Everything that would leave, is masked or stays, by what it tells, each line with its reason. */
export function PreviewItems(props: PreviewProps) {
  const { preview } = props;
  const groups = groupByKind(preview.fields);
  return (
    <div class="preview">
      <h3>{say.preview}</h3>
      <p class="quiet">{say.asOf(tellInstant(preview.asOf))}</p>
      <ul class="figures">
        {DOES.map((does) => (
          <li key={does}>
            <Sign of={SIGNS[does]} />
            <strong>{preview.counts[does]}</strong> {say.figures[does]}
          </li>
        ))}
      </ul>
      {groups.map(([kind, fields]) => (
        <KindFields key={kind} {...props} kind={kind} fields={fields} />
      ))}
      <h3>{say.others}</h3>
      <ul class="items">
        {preview.others.map((other) => (
          <Other key={other.kind} {...props} other={other} />
        ))}
      </ul>
      <h3>{say.files}</h3>
      <FileItems {...props} />
    </div>
  );
}

function KindFields({
  kind,
  fields,
  ...props
}: PreviewProps & { kind: string; fields: readonly FieldView[] }) {
  const { preview, draft, onChange } = props;
  const count = (does: FieldView['does']): number => fields.filter((field) => field.does === does).length;
  const [goes, masked, stays] = DOES.map(count) as [number, number, number];
  const name = nameKind(kind, preview);
  const chosen = draft.choices.some(({ what }) => what === kind);
  return (
    <div class="kind">
      <Fold title={`${name}: ${say.kindLine(goes, masked, stays)}`}>
        {() => (
          <ul class="items">
            {fields.map((field) => (
              <Item key={`${field.section}:${field.path}`} {...props} field={field} />
            ))}
          </ul>
        )}
      </Fold>
      {mayChoose(kind, preview) && (
        <div class="kind-acts">
          {chosen ? (
            <Button
              look="plain"
              label={say.takeBackOf(name)}
              onPress={() => onChange(choose(draft, kind, null))}
            >
              {say.takeBack}
            </Button>
          ) : (
            <TurnButton
              name={name}
              does={goes > 0 ? 'goes' : 'stays'}
              onTurn={(does) => onChange(choose(draft, kind, does))}
            />
          )}
        </div>
      )}
    </div>
  );
}

function Item({ field, preview, draft, onChange }: PreviewProps & { field: FieldView }) {
  const what = `${field.section}:${field.path}`;
  const name = nameField(field);
  const chosen = draft.choices.some((choice) => choice.what === what);
  return (
    <li class="item">
      <p class="item-name">
        <Sign of={SIGNS[field.does]} />
        {name}
      </p>
      <p class="item-value">
        {field.value === undefined ? say.does[field.does] : tellRecorded(field.value, field)}
        {field.does === 'masked' && field.how !== undefined && ` (${say.does.masked}: ${say.how[field.how]})`}
      </p>
      <p class="quiet">{field.reason}</p>
      {!mayChoose(field.kind, preview) ? null : chosen ? (
        <Button look="plain" label={say.takeBackOf(name)} onPress={() => onChange(choose(draft, what, null))}>
          {say.takeBack}
        </Button>
      ) : (
        <TurnButton name={name} does={field.does} onTurn={(does) => onChange(choose(draft, what, does))} />
      )}
    </li>
  );
}

function Other({ other, preview, draft, onChange }: PreviewProps & { other: OtherView }) {
  const { kind, count, does, reason } = other;
  const name = nameKind(kind, preview);
  const chosen = draft.choices.some(({ what }) => what === kind);
  return (
    <li class="item">
      <p class="item-name">
        <Sign of={SIGNS[does]} />
        {name}: {count}
      </p>
      <p class="item-value">{say.does[does]}</p>
      <p class="quiet">{reason}</p>
      {chosen ? (
        <Button look="plain" label={say.takeBackOf(name)} onPress={() => onChange(choose(draft, kind, null))}>
          {say.takeBack}
        </Button>
      ) : (
        mayChoose(kind, preview) && (
          <TurnButton name={name} does={does} onTurn={(to) => onChange(choose(draft, kind, to))} />
        )
      )}
    </li>
  );
}

/** Kinds in the order of the fields; those of which something is masked or stays are looked at first. */
function groupByKind(fields: readonly FieldView[]): [string, FieldView[]][] {
  const groups = new Map<string, FieldView[]>();
  for (const field of fields) {
    const kind = field.kind ?? '';
    groups.set(kind, [...(groups.get(kind) ?? []), field]);
  }
  const keeps = ([, of]: [string, FieldView[]]): number => (of.some(({ does }) => does !== 'goes') ? 0 : 1);
  return [...groups].sort((one, other) => keeps(one) - keeps(other));
}
