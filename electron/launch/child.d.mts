import type { ChildProcess } from 'node:child_process';
export interface End {
  readonly code: number;
  readonly why: string;
  readonly isEarly: boolean;
}
export function endOf(child: ChildProcess, early?: number): Promise<End>;
