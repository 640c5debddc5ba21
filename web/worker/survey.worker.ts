import './seal.ts';
import { answers } from './answers/survey.ts';
import { serve } from './serve.ts';

serve(answers);
