import { tellSize } from '../check/progress.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { Sign } from '../look/sign.js';
import { handOver as say } from '../words/hand-over.js';
import type { FileView } from './hand-over-answers.js';
import { nameFile, nameKind } from './name-items.js';
import { choose } from './packet-draft.js';
import { type PreviewProps, SIGNS } from './preview-props.js';
import { StrangersForm } from './strangers-form.js';
import { TurnButton } from './turn-button.js';

/** The files, each with what becomes of it; at pictures and videos somebody looks for strangers first. */
export function FileItems(props: PreviewProps) {
  const { files } = props.preview;
  if (files.length === 0) return <p>{say.noFiles}</p>;
  return (
    <ul class="items">
      {files.map((file) => (
        <FileItem key={file.id} {...props} file={file} />
      ))}
    </ul>
  );
}

function FileItem({ id, preview, draft, onChange, file }: PreviewProps & { file: FileView }) {
  const name = nameFile(file);
  const looked = draft.strangers[file.id];
  const chosen = draft.choices.some(({ what }) => what === file.id);
  return (
    <li class="item">
      <p class="item-name">
        <Sign of={SIGNS[file.does]} />
        {name}
      </p>
      <p class="item-value">
        {say.does[file.does]}
        {file.how !== undefined && `: ${say.how[file.how]}`} · {nameKind(file.kind, preview)} ·{' '}
        {tellSize(file.size)}
      </p>
      <p class="quiet">{file.reason}</p>
      {looked !== undefined && <p>{looked.length === 0 ? say.lookedNone : say.lookedParts(looked.length)}</p>}
      {/^(image|video)\//.test(file.type) && (
        <Fold title={`${say.strangers} ${name}`}>
          {() => (
            <StrangersForm
              source={`/api/incidents/${id}/evidence/${file.id}/original`}
              name={name}
              isPicture={file.type.startsWith('image/')}
              regions={looked}
              onLook={(regions) =>
                onChange({ ...draft, strangers: { ...draft.strangers, [file.id]: regions } })
              }
            />
          )}
        </Fold>
      )}
      {chosen ? (
        <Button
          look="plain"
          label={say.takeBackOf(name)}
          onPress={() => onChange(choose(draft, file.id, null))}
        >
          {say.takeBack}
        </Button>
      ) : (
        <TurnButton name={name} does={file.does} onTurn={(does) => onChange(choose(draft, file.id, does))} />
      )}
    </li>
  );
}
