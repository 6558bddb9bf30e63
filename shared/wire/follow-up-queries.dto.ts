import { MayBeAbsent, OneOf } from './declare-fact.js';
import { PageQueryDto } from './page-query.dto.js';

/** Lists of tasks over all incidents: open ones, unless another state is asked for. */
export class TaskQueryDto extends PageQueryDto {
  @MayBeAbsent()
  @OneOf(['yes', 'no'])
  mine?: string;

  /** Overdue now; due within a day, what is overdue among it. */
  @MayBeAbsent()
  @OneOf(['overdue', 'day'])
  due?: string;

  @MayBeAbsent()
  @OneOf(['open', 'done', 'superseded'])
  state?: 'open' | 'done' | 'superseded';
}
