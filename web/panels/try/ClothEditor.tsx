import '../parts/feature/style.css';
import type { Feature } from '../../../engine/index.ts';
import { FeatureEditor } from '../parts/feature/FeatureEditor.tsx';

/** The numbers of a thing in an option: the same editor as in the drawing stage, loaded when first wanted. */
export function ClothEditor({ feature }: { readonly feature: Feature }) {
  return <FeatureEditor feature={feature} />;
}
