import './seal.ts';
import { methods } from './methods/index.ts';
import { serve } from './serve.ts';

serve(methods);
