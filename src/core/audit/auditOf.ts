import type { SaddlePlace } from '../bridge/types';
import type { Project, TrebleBass } from '../document/types';
import type { Scale } from '../instrument/types';
import type { Result } from '../result';
import { auditLimitsInUse } from './auditLimitsInUse';
import { bridgeAudit } from './bridgeAudit';
import type { AuditPins, BridgeAudit } from './types';

const both = (treble: number | null, bass: number | null): TrebleBass | null =>
  treble === null || bass === null ? null : { treble, bass };

const pinsOf = (project: Pick<Project, 'audit' | 'bridge'>, saddle: SaddlePlace): AuditPins | null => {
  const { pinSpread, pinsFromSlot, pinsToBack } = project.audit;
  if (pinSpread === null || pinsFromSlot === null || pinsToBack === null) return null;
  const spacing = (saddle.strings[0]?.x ?? 0) - (saddle.strings.at(-1)?.x ?? 0);
  return {
    spread: pinSpread,
    spacing,
    hole: project.bridge.pins?.hole ?? 5,
    fromSlot: { treble: pinsFromSlot, bass: pinsFromSlot },
    toBack: pinsToBack,
  };
};

/** The bridge that is there, against what the strings want; null until both outer strings were read. */
export const auditOf = (
  project: Pick<Project, 'audit' | 'bridge' | 'limits' | 'setup'>,
  scale: Scale,
  saddle: SaddlePlace,
): Result<BridgeAudit> | null => {
  const { audit, limits, setup } = project;
  if (audit.treble === null || audit.bass === null) return null;
  const last = saddle.strings.length - 1;
  const present = both(audit.actionTreble, audit.actionBass);
  return bridgeAudit({
    scaleLength: scale.scaleLength,
    nutOffset: scale.nutOffset,
    from: audit.from,
    strings: saddle.strings.map(({ x, wanted }, index) => ({
      x,
      wanted,
      distance: index === 0 ? audit.treble : index === last ? audit.bass : null,
      cents: index === 0 ? audit.centsTreble : index === last ? audit.centsBass : null,
    })),
    saddle: { thickness: audit.saddleThickness, crown: { treble: audit.crown, bass: audit.crown } },
    slotWidth: audit.slotWidth,
    pins: pinsOf(project, saddle),
    ahead: audit.ahead === null ? null : { treble: audit.ahead, bass: audit.ahead },
    behind: null,
    action: present === null ? null : { present, wanted: setup.action },
    limits: auditLimitsInUse(limits),
  });
};
