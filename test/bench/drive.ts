import { Agent, request } from 'node:http';

export interface Sent {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  readonly headers: Record<string, string>;
  readonly body?: string;
}

/**
 * So many clients, each sending its next request when its last was answered, until `total` were answered.
 * @returns answers per second
 * @throws Error when an answer is none of `expected`
 */
export async function drive(
  port: number,
  clients: number,
  total: number,
  expected: number,
  next: () => Sent,
): Promise<number> {
  const agent = new Agent({ keepAlive: true, maxSockets: clients });
  let left = total;
  const begun = performance.now();
  await Promise.all(
    Array.from({ length: clients }, async () => {
      while (left > 0) {
        left -= 1;
        const status = await send(agent, port, next());
        if (status !== expected) throw new Error(`Answered ${status} in place of ${expected}`);
      }
    }),
  );
  agent.destroy();
  return (total * 1000) / (performance.now() - begun);
}

function send(agent: Agent, port: number, { method, path, headers, body }: Sent): Promise<number> {
  return new Promise((resolve, reject) => {
    const sent = request({ agent, port, host: '127.0.0.1', method, path, headers }, (answer) => {
      answer.on('error', reject);
      answer.on('end', () => resolve(answer.statusCode ?? 0));
      answer.resume();
    });
    sent.on('error', reject);
    sent.end(body);
  });
}
