import { queueFile } from '../device/outbox.js';
import { TakePhotographs } from '../look/take-photographs.js';
import { call as say } from '../words/call.js';
import { openCall } from './sync-call.js';

interface PhotographsProps {
  readonly incident: string;
  /** It is the sheet of paper from which the call is typed in. */
  readonly ofSheet: boolean;
  readonly onKept: () => void;
}

/** Photographs into the evidence of the incident: kept on the phone at once, sent when there is signal. */
export function Photographs({ incident, ofSheet, onKept }: PhotographsProps) {
  const words = ofSheet ? { caption: 'The sheet of paper.' } : undefined;
  const keep = async (file: File): Promise<void> => {
    await openCall(incident);
    await queueFile(incident, file, 'photograph', words);
    onKept();
  };
  return <TakePhotographs label={ofSheet ? say.photographs.sheet : say.photographs.take} keep={keep} />;
}
