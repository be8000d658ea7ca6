import { createBridgeAtHand } from '../../core/derive/createBridgeAtHand';
import { useStore } from '../useStore';

const atHand = createBridgeAtHand();

/** The chain of heights of the open project. */
export const useHeight = () => useStore(({ project, derived }) => atHand.height(project, derived));

/** The audit of the open project's bridge. */
export const useAudit = () => useStore(({ project, derived }) => atHand.audit(project, derived));
