import type { BridgePlace } from '../../../bridge/types';
import type { Project } from '../../../document/types';

/** One kind of hole. diameter mm. */
export interface DrillRow {
  readonly id: 'locating' | 'pins' | 'ties' | 'wire';
  readonly name: string;
  readonly where: string;
  readonly count: number;
  readonly diameter: number;
}

const SITE = {
  'slot-ends': 'in the slot ends',
  'outer-pin-holes': 'in the outer pin holes',
  free: 'in the wings',
} as const;

/** Every kind of hole that this bridge asks for, in the order in which they are drilled. */
export const drillRows = ({ bridge, strings, body }: Project, place: BridgePlace): readonly DrillRow[] => {
  const { locating, pins, ties } = bridge;
  return [
    {
      id: 'locating',
      name: 'locating pins',
      where: SITE[locating.site],
      count: place.locating.length,
      diameter: locating.drill,
    },
    ...(pins === null
      ? []
      : [
          {
            id: 'pins',
            name: 'bridge pins, pilot',
            where: 'reamed afterwards',
            count: place.pins.length,
            diameter: pins.hole,
          } as const,
        ]),
    ...(ties === null
      ? []
      : [
          {
            id: 'ties',
            name: 'string holes',
            where: ties.kind === 'tie-block' ? 'along, through the block' : 'along, to the back edge',
            count: strings.length,
            diameter: ties.hole,
          } as const,
        ]),
    ...(body?.wireHole
      ? [
          {
            id: 'wire',
            name: 'pickup wire',
            where: 'through the slot’s floor',
            count: 1,
            diameter: body.wireHole.diameter,
          } as const,
        ]
      : []),
  ];
};
