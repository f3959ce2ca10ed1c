import type { InputView, StageBalance, StageOptions } from '../../../src/index.ts';
import type { LineOutline } from '../../engine/route-outline.ts';

type SetUp = LineOutline['stages'][number];

/** A way a stage can be set up: one of a few, each with the options that make it so. */
export interface OptionChoice {
  readonly key: string;
  readonly label: string;
  readonly value: string;
  readonly answers: readonly { readonly value: string; readonly label: string; readonly options: StageOptions }[];
}

const heated = ['vat pulper', 'drum pulper', 'slushing pulper', 'broke pulper', 'disperser', 'bleaching tower'];
const ordinals = ['first', 'second', 'third', 'fourth', 'fifth'];

/** The choices that a stage has, given its kind and the figures it asks for. */
export function optionsOf(stage: StageBalance, setUp: SetUp, inputs: readonly InputView[]): readonly OptionChoice[] {
  const has = (name: string): boolean => inputs.some(({ id }) => id === `${stage.id}.${name}`);
  const isHeated = heated.includes(stage.kind) || has('heat') || has('heatTo');
  return [
    ...(stage.levels.length > 0 ? cascadeOptions(stage, setUp) : []),
    ...(isHeated ? [heatOption(has('heatTo'))] : []),
    ...(has('heatTo') ? [steamOption(setUp)] : []),
    ...(has('consistencyOut') ? [filtrateOption(setUp)] : []),
    ...(stage.kind === 'refiner' ? [powerOption(setUp)] : []),
  ];
}

function cascadeOptions(stage: StageBalance, setUp: SetUp): readonly OptionChoice[] {
  const forward = stage.levels.filter((level) => level.forward && level.number > 1).map(({ number }) => number);
  const levels = ['1', '2', '3', '4', '5'].map((value) => {
    const kept = forward.filter((number) => number <= Number(value));
    const options: StageOptions = { levels: Number(value), forward: kept.length > 0 ? kept : null };
    return { value, label: value, options };
  });
  const law: OptionChoice = {
    key: 'law',
    label: 'Components part by',
    value: setUp.law ?? 'quotient',
    answers: [
      { value: 'quotient', label: 'separation quotient', options: { law: null, rejectRateBy: null } },
      { value: 'plug flow', label: 'plug-flow exponent', options: { law: 'plug flow' } },
    ],
  };
  const rate: OptionChoice = {
    key: 'rejectRateBy',
    label: 'Reject rate is given',
    value: setUp.rejectRateBy ?? 'mass',
    answers: [
      { value: 'mass', label: 'by fibre mass', options: { rejectRateBy: null } },
      { value: 'volume', label: 'by volume', options: { rejectRateBy: 'volume' } },
    ],
  };
  return [
    { key: 'levels', label: 'Single stages', value: String(stage.levels.length), answers: levels },
    ...stage.levels.slice(1).map(({ number }) => forwardOption(number, forward)),
    law,
    ...(setUp.law === 'plug flow' ? [rate] : []),
  ];
}

function forwardOption(number: number, forward: readonly number[]): OptionChoice {
  const others = forward.filter((each) => each !== number);
  const all = [...others, number].sort((a, b) => a - b);
  return {
    key: `forward ${String(number)}`,
    label: `Accepts of the ${ordinals[number - 1] ?? ''}`,
    value: forward.includes(number) ? 'forward' : 'back',
    answers: [
      { value: 'back', label: 'back one stage', options: { forward: others.length > 0 ? others : null } },
      { value: 'forward', label: 'forward to product', options: { forward: all } },
    ],
  };
}

function heatOption(isComputed: boolean): OptionChoice {
  return {
    key: 'heat',
    label: 'Heat is',
    value: isComputed ? 'computed' : 'given',
    answers: [
      { value: 'given', label: 'given per tonne', options: { heat: 'given', steam: null } },
      { value: 'computed', label: 'worked out from temperatures', options: { heat: 'computed' } },
    ],
  };
}

function steamOption({ steam }: SetUp): OptionChoice {
  return {
    key: 'steam',
    label: 'Steam',
    value: steam ?? 'indirect',
    answers: [
      { value: 'indirect', label: 'heats through a wall', options: { steam: null } },
      { value: 'direct', label: 'is blown into the stock', options: { steam: 'direct' } },
    ],
  };
}

function filtrateOption({ filtrate }: SetUp): OptionChoice {
  return {
    key: 'filtrate',
    label: 'Filtrate goes',
    value: filtrate ?? 'clarifier',
    answers: [
      { value: 'clarifier', label: 'through a clarifier', options: { filtrate: null } },
      { value: 'dilution', label: 'back as dilution', options: { filtrate: 'dilution' } },
      { value: 'effluent', label: 'to the effluent', options: { filtrate: 'effluent' } },
    ],
  };
}

function powerOption({ power }: SetUp): OptionChoice {
  return {
    key: 'power',
    label: 'Refining power is',
    value: power ?? 'gross',
    answers: [
      { value: 'gross', label: 'given whole', options: { power: null } },
      { value: 'net and no-load', label: 'net, and no-load apart', options: { power: 'net and no-load' } },
    ],
  };
}
