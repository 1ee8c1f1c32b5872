import { BoardScreen } from '@/components/board/BoardScreen'

export default function BoardPage() {
  return <BoardScreen />
}
