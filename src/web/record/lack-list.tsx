import { Button } from '../look/button.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { overview } from '../words/overview.js';
import { record as say } from '../words/record.js';
import type { GroupedLack } from './group-lacks.js';

interface LackListProps {
  readonly lacking: readonly GroupedLack[];
  /** Leads to the field; undefined where nothing can be written. */
  readonly onSeek: ((path: string) => void) | undefined;
}

/** In the margin: what the official report still lacks of a section, each leading to its field. */
export function LackList({ lacking, onSeek }: LackListProps) {
  return (
    <Section title={lacking.length === 0 ? say.lacksNothing : say.lacks(lacking.length)}>
      <ul class="lacks">
        {lacking.map(({ path, words, state, citations }) => (
          <li key={`${path} ${words}`}>
            <Sign of={state === 'missing' ? 'no' : 'unknown'} />
            {onSeek === undefined || path === '' ? (
              words
            ) : (
              <Button look="plain" onPress={() => onSeek(path)}>
                {words}
              </Button>
            )}
            <span class="quiet">
              {' '}
              {overview.lackState[state]} · {citations.join(', ')}
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
