import { expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../src/lib/course';
import type { RunEvent } from '../../src/lib/model';
import { drawnOf, gradeTry } from '../../src/lib/scoring';
import { fishAt } from '../../src/lib/sandbox/draw/fish';
import { hangAt } from '../../src/lib/sandbox/draw/hang';
import { newPose } from '../../src/lib/sandbox/pose';

function challenge(id: string) {
  const found = findChallenge(id, loadLessons());
  if (!found) throw new Error(`there is no challenge ${id}`);
  return found;
}

test('a hook hangs and comes free in the picture when it does in the model', () => {
  const asked = challenge('free-a-snag');
  expect(drawnOf(asked.goals)).toEqual({ freed: true });
  const { events } = gradeTry(asked, asked.reference).result;
  const at = (kind: RunEvent['kind']) => events.find((event) => event.kind === kind)?.t_s ?? NaN;
  expect(
    [0, at('snag') - 0.01, at('snag'), at('freed') - 0.01, at('freed')].map((t_s) =>
      hangAt(events, t_s)
    )
  ).toEqual(['loose', 'loose', 'hung', 'hung', 'free']);
  expect(hangAt([...events, { kind: 'break', at: 'bait', t_s: 99 }], 99)).toBe('broken');
});

test('a fish is at the bait from its bite to its end, then where it let go, and never before', () => {
  const asked = challenge('bite-on-semi-slack');
  const { trace, events } = gradeTry(asked, asked.reference).result;
  const poseAt = (t_s: number) => {
    const i = trace.t_s.findIndex((t) => t >= t_s);
    const pose = newPose(2);
    pose.t_s = t_s;
    pose.x[1] = trace.bait_x_m[i];
    pose.z[1] = trace.bait_z_m[i];
    return pose;
  };
  const bite_s = events.find(({ kind }) => kind === 'bite')?.t_s ?? NaN;
  const seen = (t_s: number) => fishAt({ events, trace, pose: poseAt(t_s) });
  expect(seen(bite_s - 0.1)).toBeNull();
  expect(seen(bite_s + 1)).toEqual({
    x_m: poseAt(bite_s + 1).x[1],
    z_m: poseAt(bite_s + 1).z[1],
    isBiting: true
  });
  // A fish that moves off does so for three seconds, see the model's bite.
  const left = seen(bite_s + 3.2);
  expect(left?.isBiting).toBe(false);
  expect(left?.x_m).toBeCloseTo(poseAt(bite_s + 3).x[1], 1);
});
