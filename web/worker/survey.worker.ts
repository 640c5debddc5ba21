import './seal.ts';
import { serve } from './serve.ts';
import { methods } from './survey-methods.ts';

serve(methods);
