import type { Bundle } from '../../../core/model/bundle.ts';
import type { OneGroup } from './derive.ts';
import { FaceHint } from './entry/FaceHint.tsx';
import { LeaveOut } from './entry/LeaveOut.tsx';
import { useFrame } from './entry/useFrame.ts';
import { FaceEntry } from './FaceEntry.tsx';
import { FaceTools } from './FaceTools.tsx';
import { turnTo, usePage } from './store.ts';

interface Props {
  bundle: Bundle;
  first: OneGroup;
  second: OneGroup | null;
  entering: OneGroup;
  shaftRadius: number;
  size: number;
}

/** The face with its tools above it, and below it how they are used. */
export function FaceWork({ bundle, first, second, entering: { group }, shaftRadius, size }: Props) {
  const { whole } = usePage(bundle.setup.id);
  const frame = useFrame([first, second], group, whole, (asked) => turnTo(bundle.setup.id, { whole: asked }));
  return (
    <>
      <FaceTools bundle={bundle} first={first} second={second} entering={group} frame={frame} />
      <FaceEntry first={first} second={second} entering={group} half={frame.half} shaftRadius={shaftRadius} size={size} />
      <LeaveOut group={group} />
      <FaceHint />
    </>
  );
}
