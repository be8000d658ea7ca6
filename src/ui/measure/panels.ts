/** The panels of Measure that a maker opens: one file to load, at the first opening. */
export { AllFields } from '../fields/AllFields';
export { AuditPanel } from './AuditPanel';
export { CentsView } from './CentsView';
export { CompensationView } from './CompensationView';
export { FitFields } from './FitFields';
export { HeightMore } from './HeightMore';
export { HeightVerdict } from './HeightVerdict';
export { ModelCard } from './ModelCard';
export { NutSetback } from './NutSetback';
export { OtherFrets } from './OtherFrets';
export { StringsMore } from './StringsMore';
export { WorthMore } from './WorthMore';
