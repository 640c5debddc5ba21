import './seal.ts';
import { answers } from './answers/map.ts';
import { serve } from './serve.ts';

serve(answers);
