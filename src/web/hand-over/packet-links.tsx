import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { ErrorState } from '../look/notes.js';
import { DefinitionRows } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { packetLink as say } from '../words/packet-link.js';
import { LinkForm } from './link-form.js';

interface LinkView {
  readonly id: string;
  readonly to: string;
  readonly address: string;
  readonly expiresAt: string;
  readonly state: keyof typeof say.states;
  readonly collectedAt: string | null;
  readonly collections: readonly { readonly at: string; readonly what: keyof typeof say.happened }[];
}

interface PacketLinksProps {
  /** Address of the packet. */
  readonly path: string;
  /** For whom the packet was made. */
  readonly name: string;
  readonly makes: boolean;
}

/** The links to a packet: whether each still opens, everything that happened at it, and the way to take it back. */
export function PacketLinks({ path: packet, name, makes }: PacketLinksProps) {
  const path = `${packet}/links`;
  const { data, error, again } = useAsk<{ items: readonly LinkView[] }>(path);
  const telling = useTell();
  const links = data?.items ?? [];
  const revoke = ({ id }: LinkView): void => void telling.tell(`${path}/${id}`, { method: 'DELETE' }, [path]);
  return (
    <>
      {error !== null && <ErrorState error={error} again={again} />}
      {telling.error !== null && <ErrorState error={telling.error} />}
      {links.length > 0 && (
        <DefinitionRows
          rows={links.map((link) => ({
            term: say.links,
            value: say.linkOf(link.to, link.address),
            about: aboutOf(link),
            ...(makes &&
              link.state === 'open' && {
                action: (
                  <Button look="plain" label={say.revokeOf(link.to)} onPress={() => revoke(link)}>
                    {say.revoke}
                  </Button>
                ),
              }),
          }))}
        />
      )}
      {makes && <Fold title={say.title}>{() => <LinkForm path={path} name={name} />}</Fold>}
    </>
  );
}

function aboutOf({ state, expiresAt, collectedAt, collections }: LinkView): string {
  return [
    say.states[state](tellInstant(expiresAt)),
    collectedAt === null ? say.notCollected : say.collected(tellInstant(collectedAt)),
    ...collections.map(({ at, what }) => say.happened[what](tellInstant(at))),
  ].join(' · ');
}
