import { ToolsScreen } from '@/components/ready/ToolsScreen'

export default function ToolsPage() {
  return <ToolsScreen />
}
