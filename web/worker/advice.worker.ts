import './seal.ts';
import { methods } from './advice-methods/index.ts';
import { serve } from './serve.ts';

serve(methods);
