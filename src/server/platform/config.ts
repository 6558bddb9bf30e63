/** What the service is told by its environment. */
export interface Config {
  host: string;
  port: number;
  /** Another folder of rule packs than forms/law. */
  rulePacksDir: string | undefined;
}

/** The environment cannot be used; the message names every fault and what to set instead. */
export class ConfigError extends Error {}

/**
 * Reads HOST (127.0.0.1), PORT (8080) and RULE_PACKS_DIR (the packs of the project).
 * @throws ConfigError naming every variable at fault
 */
export function readConfig(environment: Record<string, string | undefined>): Config {
  const faults: string[] = [];
  const host = environment['HOST'] ?? '127.0.0.1';
  if (!/^[0-9A-Za-z.:-]+$/.test(host)) {
    faults.push(`HOST is ${JSON.stringify(host)}: give an address or a host name, such as 127.0.0.1.`);
  }
  const portText = environment['PORT'] ?? '8080';
  const port = Number(portText);
  if (!/^\d{1,5}$/.test(portText) || port > 65_535) {
    faults.push(
      `PORT is ${JSON.stringify(portText)}: give a whole number from 0 to 65535 (0: any free port).`,
    );
  }
  const rulePacksDir = environment['RULE_PACKS_DIR'];
  if (rulePacksDir === '') {
    faults.push('RULE_PACKS_DIR is empty: name a folder, or leave it out to use the packs of the project.');
  }
  if (faults.length > 0) throw new ConfigError(['The service cannot start.', ...faults].join('\n  '));
  return { host, port, rulePacksDir };
}
