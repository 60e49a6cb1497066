import type { ReactNode } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { AimPicture } from './derive.ts';

export interface PartProps {
  readonly bundle: Bundle;
  readonly picture: AimPicture;
}

/** The finding with its number, and what it rests on. */
export interface Head {
  readonly title: string;
  readonly note: ReactNode;
}

/** One part of the page: what it finds, and what stands under the flight. */
export interface Part {
  readonly name: string;
  readonly useHead: (props: PartProps) => Head;
  readonly Body: (props: PartProps) => ReactNode;
}
