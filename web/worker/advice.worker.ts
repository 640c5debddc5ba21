import './seal.ts';
import { answers } from './answers/advice.ts';
import { serve } from './serve.ts';

serve(answers);
