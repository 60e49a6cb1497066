export interface RunningHost {
  readonly pid: number;
  /** Admits one page, once. */
  readonly address: string;
  readonly ended: Promise<number>;
  newAddress(): Promise<string>;
  stop(): Promise<number>;
}
export function startHost(options?: { env?: NodeJS.ProcessEnv; program?: string }): Promise<RunningHost>;
