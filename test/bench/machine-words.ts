import { cpus, totalmem } from 'node:os';

/** What the times were taken on. */
export interface MachineWords {
  readonly processor: string;
  readonly cores: number;
  readonly memoryGiB: number;
  readonly system: string;
  readonly node: string;
}

export function machineWords(): MachineWords {
  return {
    processor: cpus()[0]?.model.trim() ?? 'unknown processor',
    cores: cpus().length,
    memoryGiB: Math.round(totalmem() / 2 ** 30),
    system: `${process.platform} ${process.arch}`,
    node: process.version,
  };
}
